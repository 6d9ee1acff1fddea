namespace PlotAgronomy.Records;

/// <summary>A soil report of the plot; the date of the entry is the day on which it was sampled.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record SoilReportEntry : BookEntry
{
    internal const string Word = "soil-report";

    /// <summary>Gets the report as it is printed.</summary>
    public required SoilReport Report
    {
        get;
        init => field = Guard.NotNull(value, nameof(Report));
    }

    internal override string What => Word;

    internal override void Write(FieldWriter to) => ReportFields.Write(to, Report);

    internal static SoilReportEntry Read(FieldReader from, DateOnly on, string plot) =>
        new()
        {
            On = on,
            Plot = plot,
            Report = ReportFields.Read(from),
        };
}
