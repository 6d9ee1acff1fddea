namespace PlotAgronomy.Nutrients;

/// <summary>The sum of a system that raises the soil below a level and puts back what leaves.</summary>
internal interface IBuildUpKernel : INeedKernel
{
    /// <summary>Most of a year; infinite where there is no such limit.</summary>
    double Cap { get; }

    /// <summary>The part that raises the soil.</summary>
    double BuildUp(double test, double capacity);

    /// <summary>The part that puts back what leaves.</summary>
    double Replaced(double test, double capacity);
}
