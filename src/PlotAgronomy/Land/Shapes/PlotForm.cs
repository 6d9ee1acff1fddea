namespace PlotAgronomy.Land;

/// <summary>Form of a plot whose area follows from a few measured sides.</summary>
internal enum PlotForm
{
    Rectangle,
    Triangle,
    Trapezoid,
    Circle,
}
