/** What this is not; short, and always in sight on the start page. */
export const Cautions = () => (
  <section class="cautions" aria-labelledby="cautions-head">
    <h2 id="cautions-head">Before you start</h2>
    <ul>
      <li>It trains the order and the rules of sterile technique. It is not medical advice, not a device and no proof of competence.</li>
      <li>Your local policy, the label on the product in the room and supervised practice come first.</li>
      <li>A screen cannot teach feel.</li>
      <li>Its results alone are not for decisions about employment or credentials.</li>
    </ul>
  </section>
);
