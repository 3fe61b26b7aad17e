/** Streaming 64-bit state hash (two 32-bit lanes, integer arithmetic only). Finds differences; it is not cryptographic. */
export class StateHash {
  private a = 0x811c9dc5 | 0;
  private b = 0x1b873593 | 0;
  private readonly word = new Float64Array(1);
  private readonly bits = new Uint32Array(this.word.buffer);

  /** Mixes one 32-bit integer. */
  addInt(value: number): this {
    this.a = Math.imul(this.a ^ value, 16777619);
    const x = this.b ^ Math.imul(value, 0xcc9e2d51);
    this.b = (Math.imul((x << 13) | (x >>> 19), 5) + 0xe6546b64) | 0;
    return this;
  }

  /** Mixes the exact bits of a number; −0 counts as 0. */
  addNumber(value: number): this {
    this.word[0] = value + 0;
    return this.addInt(this.bits[0]!).addInt(this.bits[1]!);
  }

  /** Mixes the exact bits of an array of doubles; the same as `addInt` of each half, with both lanes kept at hand. */
  addNumbers(values: Float64Array): this {
    const bits = new Int32Array(values.buffer, values.byteOffset, values.length * 2);
    let { a, b } = this;
    for (let k = 0; k < bits.length; k++) {
      const value = bits[k]!;
      a = Math.imul(a ^ value, 16777619);
      const x = b ^ Math.imul(value, 0xcc9e2d51);
      b = (Math.imul((x << 13) | (x >>> 19), 5) + 0xe6546b64) | 0;
    }
    this.a = a;
    this.b = b;
    return this;
  }

  addText(text: string): this {
    for (let k = 0; k < text.length; k++) this.addInt(text.charCodeAt(k));
    return this.addInt(text.length);
  }

  /** 16 lower-case hexadecimal digits. */
  digest(): string {
    const hex = (value: number): string => (value >>> 0).toString(16).padStart(8, '0');
    let a = this.a ^ (this.b >>> 15);
    a = Math.imul(a ^ (a >>> 16), 0x85ebca6b);
    let b = this.b ^ (a >>> 13);
    b = Math.imul(b ^ (b >>> 16), 0xc2b2ae35);
    return hex(a ^ (a >>> 16)) + hex(b ^ (b >>> 16));
  }
}
