// The part of logic-solver that the tests use; the package brings no types.
declare module 'logic-solver' {
  export interface Formula {
    readonly brand: 'formula';
  }
  export interface Solution {
    getFormula(): Formula;
    getTrueVars(): string[];
  }
  export interface Solver {
    require(...formulas: (string | Formula)[]): void;
    forbid(...formulas: (string | Formula)[]): void;
    solve(): Solution | null;
  }
  const Logic: {
    readonly Solver: new () => Solver;
    exactlyOne(...operands: (string | Formula)[]): Formula;
    atMostOne(...operands: (string | Formula)[]): Formula;
    or(...operands: (string | Formula)[]): Formula;
    and(...operands: (string | Formula)[]): Formula;
    not(operand: string | Formula): Formula;
  };
  export default Logic;
}
