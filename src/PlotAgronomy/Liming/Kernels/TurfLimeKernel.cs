namespace PlotAgronomy.Liming;

/// <summary>The turf table to one target: a column with a rule by the rule, one without by its rows.</summary>
internal readonly struct TurfLimeKernel : ILimeKernel
{
    public static bool IsTotal => false;

    /// <summary>The column without a rule; null where there is a rule.</summary>
    internal LimeTableColumn? Column { get; init; }

    internal double PerMeq { get; init; }

    internal double LessPounds { get; init; }

    internal double StepPoundsPerAcre { get; init; }

    internal double LeastPoundsPerAcre { get; init; }

    internal double PrintedStep { get; init; }

    internal double PoundsPerThousand(double reading) =>
        LimeMath.TurfPoundsPerThousandSquareFeet(
            reading,
            PerMeq,
            LessPounds,
            StepPoundsPerAcre,
            LeastPoundsPerAcre,
            PrintedStep
        );

    public double PoundsPerAcre(double reading, double waterPh, out LimeRemarks remarks)
    {
        if (Column is not null)
        {
            return Column.PoundsPerAcre(reading, out remarks);
        }

        remarks = LimeRemarks.None;
        return ApplicationRate.FromPoundsPerThousandSquareFeet(PoundsPerThousand(reading)).PoundsPerAcre;
    }
}
