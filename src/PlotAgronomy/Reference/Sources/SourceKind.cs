namespace PlotAgronomy.Reference;

internal enum SourceKind
{
    Publication,

    /// <summary>Practice of the trade, without an institution.</summary>
    Practice,

    /// <summary>The definitions of the units themselves.</summary>
    ExactUnits,
}
