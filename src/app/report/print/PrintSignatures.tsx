/** What the report is not, and where it is signed; `run` says which run that is, for it may stand on a page of its own. */
export const PrintSignatures = ({ run }: { readonly run: string }) => (
  <section class="print-end">
    <p class="print-cautions">
      A training aid for the order and the rules of sterile technique: not medical advice, not a device, no proof of competence. Local policy, the label on the product in the room and supervised
      practice come first. A screen cannot teach feel. Results alone are not for decisions about employment or credentials.
    </p>
    <p class="print-run">{run}</p>
    <div class="print-lines">
      {['Trainee', 'Date', 'Supervisor', 'Date'].map((name, k) => (
        <div key={k} class={name === 'Date' ? 'print-line print-date' : 'print-line'}>
          {name}
        </div>
      ))}
      <div class="print-line print-comment">Comment</div>
    </div>
  </section>
);
