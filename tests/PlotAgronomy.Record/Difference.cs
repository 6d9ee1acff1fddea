namespace PlotAgronomy.Record;

/// <summary>A value that is not what it was; null where there was or is none.</summary>
internal sealed record Difference(string Case, string Meaning, string? Old, string? New)
{
    public override string ToString() => $"{Case} | {Meaning} | {Old ?? "(not there)"} | {New ?? "(gone)"}";
}
