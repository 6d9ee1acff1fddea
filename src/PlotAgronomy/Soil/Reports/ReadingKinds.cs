using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Readings of one kind: one extractant, unit and form. Two that differ are a question, never a choice.</summary>
internal static class ReadingKinds
{
    /// <summary>The one reading of its kind; null where two of that kind differ. Of several kinds the choice does not depend on
    /// the order of the report.</summary>
    internal static SoilReading? OnlyOne(IEnumerable<SoilReading> readings)
    {
        var kinds = readings.GroupAlike(AreOfOneKind);
        kinds.Sort((one, other) => OrderOf(one[0]).CompareTo(OrderOf(other[0])));
        return kinds.Count > 0 && !Differ(kinds[0]) ? kinds[0][0] : null;
    }

    internal static bool Differ(IEnumerable<SoilReading> ofOneKind) => ofOneKind.Distinct().Skip(1).Any();

    private static (int, int, int) OrderOf(SoilReading reading) =>
        ((int)reading.Extractant, (int)reading.Unit, (int)reading.Form);

    internal static bool AreOfOneKind(SoilReading one, SoilReading other) =>
        one.Extractant == other.Extractant && one.Unit == other.Unit && one.Form == other.Form;
}
