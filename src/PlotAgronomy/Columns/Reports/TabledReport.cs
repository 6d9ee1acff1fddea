namespace PlotAgronomy.Columns;

/// <summary>A row of a table of soil tests as a report.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class TabledReport
{
    internal TabledReport(int line, ReportDraft read, SoilReport alike)
    {
        Line = line;
        Sample = read.Sample;
        Crop = read.Crop;
        Report = read.Finish(alike);
    }

    /// <summary>Gets the line of the file, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Gets the name or number of the sample; empty where the table has none.</summary>
    public string Sample { get; }

    /// <summary>Gets the crop in the words of the table; empty where it names none.</summary>
    public string Crop { get; }

    /// <summary>Gets the report.</summary>
    public SoilReport Report { get; }

    /// <summary>The sample, or the line.</summary>
    /// <returns>Text such as <c>sample 4711</c>.</returns>
    public override string ToString() => Sample.Length > 0 ? $"sample {Sample}" : $"line {Amounts.Print(Line, 0)}";
}
