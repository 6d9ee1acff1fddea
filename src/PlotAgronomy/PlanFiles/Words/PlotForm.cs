namespace PlotAgronomy.PlanFiles;

/// <summary>Form of a plot whose sides were measured.</summary>
internal enum PlotForm
{
    Rectangle,
    Triangle,
    Trapezoid,
    Circle,
}
