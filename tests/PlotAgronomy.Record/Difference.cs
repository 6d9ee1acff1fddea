namespace PlotAgronomy.Record;

/// <summary>A value that is not what it was; null where there is none any more.</summary>
internal sealed record Difference(string Case, string Meaning, string Old, string? New)
{
    public override string ToString() => $"{Case} | {Meaning} | {Old} | {New ?? "(gone)"}";
}
