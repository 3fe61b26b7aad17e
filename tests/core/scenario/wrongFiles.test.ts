import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { FILES, RULE_IDS } from './wrongFiles.ts';

/** What the author reads for each wrong file: kind of error, place in the file, sentence. */
const SENTENCES: Readonly<Record<string, readonly [kind: string, path: string, message: string]>> = {
  'an empty file': ['notJson', '', 'The file is not JSON: line 1, column 1 should hold a value. Correct the file and open it again.'],
  'a comma after the last field': ['notJson', '', 'The file is not JSON: line 3, column 1 should hold a name in double quotes after the comma. Correct the file and open it again.'],
  'a comma forgotten': ['notJson', '', 'The file is not JSON: line 3, column 3 should hold a comma or the closing bracket. Correct the file and open it again.'],
  'a name without quotes': ['notJson', '', 'The file is not JSON: line 1, column 3 should hold a name in double quotes or }. Correct the file and open it again.'],
  'single quotes': ['notJson', '', 'The file is not JSON: line 1, column 9 should hold a value. Correct the file and open it again.'],
  'a remark in the file': ['notJson', '', 'The file is not JSON: line 2, column 3 should hold a name in double quotes or }. Correct the file and open it again.'],
  'a number with a decimal comma': ['notJson', '', 'The file is not JSON: line 1, column 16 should hold a name in double quotes after the comma. Correct the file and open it again.'],
  'a file cut off': ['notJson', '', 'The file is not JSON: line 1, column 32 should hold a name in double quotes or }. Correct the file and open it again.'],
  'something after the end': ['notJson', '', 'The file is not JSON: line 1, column 15 should hold the end of the file. Correct the file and open it again.'],
  'a colon forgotten': ['notJson', '', 'The file is not JSON: line 1, column 10 should hold a colon. Correct the file and open it again.'],
  'a list cut off after a comma': ['notJson', '', 'The file is not JSON: line 1, column 5 should hold a value. Correct the file and open it again.'],
  'a huge file': ['notAScenario', '', 'The file has 300002 characters; a scenario has 262144 at most. Choose a scenario file.'],
  'a list instead of an object': ['notAScenario', '', 'The file holds a list; a scenario is an object in braces {}. Choose a scenario file.'],
  'null instead of an object': ['notAScenario', '', 'The file holds null; a scenario is an object in braces {}. Choose a scenario file.'],
  'no format': ['notAScenario', 'format', 'format is missing; allowed is "sterile-field-scenario". Choose a scenario file.'],
  'the file of a run': ['notAScenario', 'format', 'format is "sterile-field-run"; allowed is "sterile-field-scenario". Choose a scenario file.'],
  'no version': ['notAScenario', 'version', 'version is missing; allowed is a whole number, at present 1. Correct the file and open it again.'],
  'a version in words': ['notAScenario', 'version', 'version is "one"; allowed is a whole number, at present 1. Correct the file and open it again.'],
  'version zero': ['notAScenario', 'version', 'version is 0; allowed is a whole number, at present 1. Correct the file and open it again.'],
  'a newer version': ['tooNew', 'version', 'version is 9; this trainer reads up to 1. Open the file with a newer trainer.'],
  'no title': ['wrongField', 'title', 'title is missing; allowed is text of 3 to 60 characters. Add it and open the file again.'],
  'a title too short': ['wrongField', 'title', 'title is "A" (1 character); allowed is text of 3 to 60 characters. Correct the file and open it again.'],
  'a summary too long': ['wrongField', 'summary', 'summary is "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…" (301 characters); allowed is text of 3 to 300 characters. Correct the file and open it again.'],
  'an id with capitals and blanks': ['wrongField', 'id', 'id is "My Scenario"; allowed is small letters, digits and hyphens, a letter first, 40 characters at most. Correct the file and open it again.'],
  'a seed below zero': ['wrongField', 'seed', 'seed is -1; allowed is a whole number from 0 to 4294967295. Correct the file and open it again.'],
  'a seed with a fraction': ['wrongField', 'seed', 'seed is 1.5; allowed is a whole number from 0 to 4294967295. Correct the file and open it again.'],
  'another station': ['wrongField', 'station', 'station is "gown"; allowed is "field". Correct the file and open it again.'],
  'too many minutes': ['wrongField', 'minutes', 'minutes is 60; allowed is 1 to 15. Correct the file and open it again.'],
  'rails too near': ['wrongField', 'room.rails.xM', 'room.rails.xM is 0.3; allowed is 0.4 to 0.65. Correct the file and open it again.'],
  'a number in quotes': ['wrongField', 'room.rails.xM', 'room.rails.xM is "0.5"; allowed is a number from 0.4 to 0.65. Correct the file and open it again.'],
  'null for a number': ['wrongField', 'room.bed.mattressTopM', 'room.bed.mattressTopM is null; allowed is a number from 0.6 to 1.2. Correct the file and open it again.'],
  'a name misspelt': ['wrongField', 'room.rails.xm', 'room.rails.xm is not a known field; the nearest is xM. Correct or remove it and open the file again.'],
  'a needed name misspelt': ['wrongField', 'titel', 'titel is not a known field; the nearest is title. Correct or remove it and open the file again.'],
  'a name in the wrong place': ['wrongField', 'mattressTopM', 'mattressTopM is not a known field; its place is room.bed.mattressTopM. Correct or remove it and open the file again.'],
  'a name with odd signs': ['wrongField', 'room."bad name!"', 'room."bad name!" is not a known field; known here are bed, rails, pole, patient, machine, kitTable, bin, assistantXM. Correct or remove it and open the file again.'],
  'a word for yes': ['wrongField', 'room.rails.left.up', 'room.rails.left.up is "yes"; allowed is true or false. Correct the file and open it again.'],
  'a rail of no kind': ['wrongField', 'room.rails.left', 'room.rails.left is true; allowed is an object in braces {}. Correct the file and open it again.'],
  'a drape that reaches nowhere': ['wrongField', 'drape.left.reach', 'drape.left.reach is "under"; allowed is "over" or "inside". Correct the file and open it again.'],
  'coaching that is no choice': ['wrongField', 'coaching', 'coaching is "loud"; allowed is "shown" or "silent". Correct the file and open it again.'],
  'items as an object': ['wrongField', 'items', 'items is an object; allowed is a list in brackets []. Correct the file and open it again.'],
  'too many cues': ['wrongField', 'cues', 'cues has 31 entries; allowed are 30 at most. Correct the file and open it again.'],
  'a cue of no kind': ['wrongField', 'cues[0].kind', 'cues[0].kind is "sneeze"; allowed is "patientTurns", "cough", "cordPulled" or "itch". Correct the file and open it again.'],
  'a cue without a time': ['wrongField', 'cues[0].atS', 'cues[0].atS is missing; allowed is a number from 0 to 3600. Add it and open the file again.'],
  'an item id with a hyphen': ['wrongField', 'items[0].id', 'items[0].id is "gel-1"; allowed is letters and digits, a small letter first, 24 characters at most. Correct the file and open it again.'],
  'rails inside the mattress': ['inconsistent', 'room.rails.xM', 'room.rails.xM is 0.49; allowed is 0.515 at least, so that the rails stand outside the mattress. Correct the file and open it again.'],
  'an opening beside the patient': ['inconsistent', 'room.patient.openingM', 'room.patient.openingM is 0.2; allowed is 0.12 at most, so that the opening lies on the patient. Correct the file and open it again.'],
  'prepared skin beside the patient': ['inconsistent', 'room.patient.preparedBeyondM', 'room.patient.preparedBeyondM is 0.15; allowed is 0.11 at most, so that the prepared skin lies on the patient. Correct the file and open it again.'],
  'adhesive beside the patient': ['inconsistent', 'drape.right.gluedM', 'drape.right.gluedM is 0.12; allowed is 0.11 at most, so that the adhesive lies on the patient. Correct the file and open it again.'],
  'the bin in the kit table': ['inconsistent', 'room.bin.xM', 'room.bin stands from -1.37 to -1.03 and room.kitTable stands from -1.24 to -0.72; allowed is one beside the other. Correct the file and open it again.'],
  'the pole in the bed': ['inconsistent', 'room.pole.xM', 'room.pole stands from 0.188 to 0.213 and room.rails stands from -0.505 to 0.505; allowed is one beside the other. Correct the file and open it again.'],
  'the outlet on the other side': ['inconsistent', 'room.machine.outletXM', 'room.machine.outletXM is -1; allowed is between the bed and room.machine.xM, which is 1.15. Correct the file and open it again.'],
  'the assistant in the bed': ['inconsistent', 'room.assistantXM', 'room.assistantXM is 0.1; allowed is 0.505 or more to either side, beside the bed. Correct the file and open it again.'],
  'the face below the shoulders': ['inconsistent', 'operator.faceM', 'operator.faceM is 1.4; allowed is 1.6 at least, above the shoulders. Correct the file and open it again.'],
  'the waist too high': ['inconsistent', 'operator.waistM', 'operator.waistM is 1.25; allowed is 1.2 at most, below the shoulders. Correct the file and open it again.'],
  'a drape too short for the rail': ['inconsistent', 'drape.left.lengthM', 'drape.left.lengthM is 0.8; allowed is 0.93 at least, so that it hangs over the rail. Correct the file and open it again.'],
  'a drape too short for a lowered rail': ['inconsistent', 'drape.left.lengthM', 'drape.left.lengthM is 0.5; allowed is 0.6 at least, so that it hangs over the side of the bed. Correct the file and open it again.'],
  'a drape too long to end on the bed': ['inconsistent', 'drape.right.lengthM', 'drape.right.lengthM is 0.6; allowed is 0.387 at most, so that it ends on the bed. Correct the file and open it again.'],
  'a drape that leaves the patient bare': ['inconsistent', 'drape.left.lengthM', 'drape.left.lengthM is 0.3; allowed is 0.364 at least, so that it covers the patient. Correct the file and open it again.'],
  'a cord too short': ['inconsistent', 'cord.lengthM', 'cord.lengthM is 1.2; allowed is 1.331 at least, so that it reaches the site over the rail with some slack. Correct the file and open it again.'],
  'more slack than there is cord': ['inconsistent', 'cord.slackM', 'cord.slackM is 0.6; allowed is 0.395 at most, what is left of the cord between the probe and the outlet. Correct the file and open it again.'],
  'a sheath longer than the cord': ['inconsistent', 'cord.coveredM', 'cord.coveredM is 2; allowed is 1.8 at most, the length of the cord. Correct the file and open it again.'],
  'a sheath that is all tail': ['inconsistent', 'policy.sheathTailM', 'policy.sheathTailM is 0.3; allowed is 0.2 at most, the covered part of the cord. Correct the file and open it again.'],
  'an item in the opening': ['inconsistent', 'items[2].xM', 'items[2].xM is -0.05; allowed is the field, -0.45 to -0.13 or 0.03 to 0.45, and the kit table, -1.215 to -0.745. Correct the file and open it again.'],
  'an item on the rail': ['inconsistent', 'items[2].xM', 'items[2].xM is 0.49; allowed is the field, -0.45 to -0.13 or 0.03 to 0.45, and the kit table, -1.215 to -0.745. Correct the file and open it again.'],
  'the probe on the kit table': ['inconsistent', 'probe.xM', 'probe.xM is 0.47; allowed is the field, -0.45 to -0.13 or 0.03 to 0.45. Correct the file and open it again.'],
  'two items in one place': ['inconsistent', 'items[2].xM', 'items[2].xM is -0.28; allowed is 0.05 or more from items[0].xM, which is -0.3. Correct the file and open it again.'],
  'two items of one name': ['inconsistent', 'items[3].id', 'items[3].id is "gel" again; allowed is each name once. Correct the file and open it again.'],
  'an item with the name of the probe': ['inconsistent', 'items[2].id', 'items[2].id is "probe"; allowed is a name that no other thing in the room has. Correct the file and open it again.'],
  'no gel': ['inconsistent', 'items', 'items is a list without a gelPacket; allowed is one of them at least, because a task needs it. Correct the file and open it again.'],
  'a cue after the end': ['inconsistent', 'cues[1].atS', 'cues[1].atS is 121; allowed is 0 to 120, within the minutes foreseen. Correct the file and open it again.'],
  'a rule that is not in the book': ['inconsistent', 'rulesOff[0]', 'rulesOff[0] is "glove-rial"; allowed is a rule of the rule book; the nearest is glove-rail. Correct the file and open it again.'],
  'a rule of some other kind': ['inconsistent', 'rulesOff[0]', 'rulesOff[0] is "everything"; allowed is a rule of the rule book. Correct the file and open it again.'],
  'a rule named twice': ['inconsistent', 'rulesOff[1]', 'rulesOff[1] is "glove-rail" again; allowed is each rule once. Correct the file and open it again.'],
};

describe('A wrong scenario file is answered with one sentence that says where, what and what to do', () => {
  it.each(Object.keys(FILES))('%s', (name) => {
    const result = parseScenario(FILES[name]!, { ruleIds: RULE_IDS });
    expect(result.ok ? 'was taken' : [result.error.kind, result.error.path, result.error.message]).toEqual(SENTENCES[name]);
  });

  it('has a sentence for every file, and no other', () => {
    expect(Object.keys(SENTENCES)).toEqual(Object.keys(FILES));
  });
});
