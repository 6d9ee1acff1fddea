using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>What was taken from a printed table, as lines of a working.</summary>
internal static class LimeTableLines
{
    internal const string BaseRate = "Base rate";

    internal static WorkedLine Row(string what, string answer, Origin origin) =>
        LimingFormulas.All["lime-table-row"].Line(answer, ("what", what)).From(origin);

    /// <summary>The straight line between two rows; rates in lb/ac, printed in ton/ac.</summary>
    internal static WorkedLine Between(
        (double Reading, double Rate) below,
        (double Reading, double Rate) above,
        double reading,
        Origin origin
    ) =>
        LimingFormulas
            .All["lime-between-rows"]
            .Line(
                $"{LimeText.Tons(Interpolation.Line(below.Reading, below.Rate, above.Reading, above.Rate, reading))} ton/ac",
                ("rate of the row below", LimeText.Tons(below.Rate)),
                ("rate of the row above", LimeText.Tons(above.Rate)),
                ("row below", LimeText.Ph(below.Reading)),
                ("row above", LimeText.Ph(above.Reading)),
                ("reading", LimeText.Ph(reading))
            )
            .From(origin);
}
