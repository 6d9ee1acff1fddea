namespace PlotAgronomy.Reference;

internal enum FormulaKind
{
    /// <summary>Arithmetic that can be evaluated as it stands.</summary>
    Expression,

    /// <summary>A look-up, a search or a rounding, told in words.</summary>
    Words,
}
