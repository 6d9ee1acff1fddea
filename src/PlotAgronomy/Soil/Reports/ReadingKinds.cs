using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Readings of one kind: one extractant, unit and form. Two that differ are a question, never a choice.</summary>
internal static class ReadingKinds
{
    /// <summary>The one reading of its kind; null where two of that kind differ. Of several kinds the choice does not depend on
    /// the order of the report.</summary>
    internal static SoilReading? OnlyOne(IEnumerable<SoilReading> readings) =>
        readings
            .GroupAlike(AreOfOneKind)
            .OrderBy(kind => (int)kind[0].Extractant)
            .ThenBy(kind => (int)kind[0].Unit)
            .ThenBy(kind => (int)kind[0].Form)
            .FirstOrDefault()
            is { } first
        && !Differ(first)
            ? first[0]
            : null;

    internal static bool Differ(IEnumerable<SoilReading> ofOneKind) => ofOneKind.Distinct().Skip(1).Any();

    internal static bool AreOfOneKind(SoilReading one, SoilReading other) =>
        one.Extractant == other.Extractant && one.Unit == other.Unit && one.Form == other.Form;
}
