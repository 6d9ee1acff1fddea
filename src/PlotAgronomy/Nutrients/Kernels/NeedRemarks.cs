namespace PlotAgronomy.Nutrients;

/// <summary>What the sum of a need notices on its way.</summary>
[Flags]
internal enum NeedRemarks
{
    None = 0,

    /// <summary>The need is none, though the printed curve gives pounds again.</summary>
    CurveTurnsUp = 1,

    /// <summary>The sum was cut at the most of a year.</summary>
    YearlyCap = 2,

    /// <summary>Removal is put back however rich the soil is.</summary>
    NoUpperLimit = 4,

    /// <summary>A range is printed, and no single figure.</summary>
    RangeOnly = 8,

    /// <summary>What a harvest removes is printed for a plot from which nothing leaves.</summary>
    MaintenancePrinted = 16,

    /// <summary>The test lies above the last class printed.</summary>
    BeyondPrintedTable = 32,

    /// <summary>The class is known, and its rate is not held here.</summary>
    RatesNotHeld = 64,

    /// <summary>Fertilizer is likely to pay, and no rate is printed.</summary>
    YesWithoutRate = 128,
}
