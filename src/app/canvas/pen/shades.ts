import { down, fixed, type Shade } from './shade.ts';

/** One two- or three-stop shade per material. */
export const METAL_SHADE: Shade = { stops: [[0, '#D7DCDF'], [0.45, '#BFC7CB'], [1, '#97A2A9']], axis: 'across' };
export const DARK_SHADE = down('#59656D', '#414C53');
export const MATTRESS_SHADE = down('#ECEEED', '#CFD5D5');
export const WALL_SHADE = down('#F6F7F5', '#EDF0EE');
export const FLOOR_SHADE = down('#DCE1E0', '#CDD4D3');
/** Gown, in centimetres of the operator: from the shoulders to the hem. */
export const GOWN_SHADE: Shade = { stops: [[0, '#CEDDE6'], [0.4, '#BFD2DD'], [1, '#A6BDCB']], axis: [0, 150, 0, 34] };
export const GOWN_SIDES: Shade = { stops: [[0, '#8FAAB952'], [0.16, '#8FAAB900'], [0.84, '#8FAAB900'], [1, '#8FAAB952']], axis: 'across' };
export const FOREARM_SHADE: Shade = { stops: [[0, '#7F9CAD00'], [0.6, '#7F9CAD00'], [1, '#7F9CAD61']], axis: 'down' };
export const CLOTHES_SHADE: Shade = { stops: [[0, '#C2B9C9'], [1, '#A89EB1']], axis: [0, 144, 0, 8] };
export const DRAPE_FAR_SHADE = down('#CFE4E2', '#A5CACA');
export const COVER_SHADE = down('#9DC5C6', '#83B3B6');
export const PATIENT_SHADE = down('#E6C3A6', '#D3A684');
export const CAP_SHADE = down('#A9C3D0', '#85A5B6');
export const MASK_SHADE = down('#E9F1F3', '#C6D8DE');
export const BAG_SHADE = down('#F4F8F8F2', '#D5E3E6E6');
/** Hand, in millimetres of the hand. */
export const GLOVE_SHADE = fixed([0, -60, 0, 56], '#FBF7EC', '#F3ECDC', '#DFD3B9');
export const CUFF_SHADE = fixed([0, -40, 0, 42], '#FAF5E9', '#F1E9D7', '#DACDB1');
export const ASSISTANT_HAND_SHADE = fixed([0, -60, 0, 56], '#EBCBB0', '#E0BA9B', '#C99B79');
export const OPERATOR_HAND_SHADE = fixed([0, -60, 0, 56], '#B98A66', '#A87552', '#8C5E3F');
export const PROBE_SHADE: Shade = { stops: [[0, '#E9ECED'], [0.55, '#D4D9DB'], [1, '#ABB4B9']], axis: 'across' };
export const FILM_SHADE: Shade = { stops: [[0, '#E8F5F8B8'], [0.4, '#D7ECF157'], [1, '#BCDCE4A8']], axis: 'across' };
