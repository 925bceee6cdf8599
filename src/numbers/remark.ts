/** A note or caution of a result: a code for programs, a sentence for people. */
export interface Remark<Code extends string = string> {
  readonly code: Code;
  readonly text: string;
}
