namespace PlotAgronomy.Tests.Formulas;

/// <summary>How one printed formula is held against the function that computes it.</summary>
/// <param name="Id">Id of the formula.</param>
/// <param name="Kernel">The library's function, given the values of the formula's places.</param>
/// <param name="Domain">Every place with the range it is drawn from.</param>
public sealed record FormulaCheck(string Id, Func<Draw, double> Kernel, params (string Place, double Low, double High)[] Domain);
