namespace PlotAgronomy.Land;

/// <summary>Form of a plot whose area follows from a few measured sides.</summary>
internal enum PlotForm
{
    Rectangle,
    Triangle,
    Trapezoid,
    Circle,

    /// <summary>A rectangle with a smaller rectangle missing from one corner.</summary>
    LShape,

    /// <summary>Any number of sides, and the diagonals from the first corner.</summary>
    SidesAndDiagonals,
}
