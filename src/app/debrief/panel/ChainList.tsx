import { isSpared, type ChainLink } from '../room/chainLinks.ts';
import { momentText } from '../timeText.ts';

interface ChainListProps {
  readonly links: readonly ChainLink[];
  /** Surfaces that would have stayed as they were under the chosen what-if. */
  readonly spared: ReadonlySet<string> | null;
  readonly onLink: (link: ChainLink) => void;
}

/** The chain of a break from its root: each link a button that leads to its instant. */
export const ChainList = ({ links, spared, onLink }: ChainListProps) => (
  <ol class="chain debrief-chain">
    {links.map((link) => {
      const saved = isSpared(link, spared);
      return (
        <li key={link.number}>
          <button class={saved ? 'chain-link chain-saved' : 'chain-link'} onClick={() => onLink(link)}>
            <span class={link.from === null ? 'chain-badge chain-root' : 'chain-badge'}>{link.number}</span>
            <span class="chain-time">{momentText(link.step)}</span>
            <span class="chain-words">
              <span class="chain-surface">{link.words}</span> <span class="chain-how">{saved ? 'spared' : link.how}</span>
            </span>
          </button>
        </li>
      );
    })}
  </ol>
);
