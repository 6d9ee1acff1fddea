namespace PlotAgronomy.Soil;

/// <summary>Readings of one kind: one extractant, unit and form. Two that differ are a question, never a choice.</summary>
internal static class ReadingKinds
{
    /// <summary>The one reading of its kind; null where two of that kind differ. Of several kinds the choice does not depend on
    /// the order of the report.</summary>
    internal static SoilReading? OnlyOne(IEnumerable<SoilReading> readings) =>
        readings.GroupBy(KindOf).MinBy(kind => kind.Key) is { } first && !Differ(first) ? first.First() : null;

    internal static bool Differ(IEnumerable<SoilReading> ofOneKind) => ofOneKind.Distinct().Skip(1).Any();

    internal static (Extractant Extractant, SoilTestUnit Unit, PrintedForm Form) KindOf(SoilReading reading) =>
        (reading.Extractant, reading.Unit, reading.Form);
}
