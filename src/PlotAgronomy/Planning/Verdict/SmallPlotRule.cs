using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that deer take before they grow, where the plot is small.</summary>
internal sealed class SmallPlotRule
{
    private static readonly Table<SmallPlotRule> Rules = new("Planning/Data/small-plots.csv", r => new SmallPlotRule(r));

    private readonly KindSelector kinds;
    private readonly Area least;

    private SmallPlotRule(CsvRow row)
    {
        kinds = KindSelector.Read(row, "selects");
        least = Area.FromAcres(row.Number("least_acres"));
        _ = row.Origin();
    }

    internal static IEnumerable<KindObstacle> Against(PlotPlan plan, CropKind kind) =>
        from rule in Rules.Rows
        where rule.kinds.Selects(kind) && plan.Plot.Area.Acres < rule.least.Acres
        select new KindObstacle(
            KindDecision.Sow,
            FindingCatalog.Create(
                PlanningCodes.DeerOnSmallPlot,
                ("kind", kind.ShortName),
                ("area", Amounts.Print(plan.Plot.Area, "ac", 2)),
                ("least", Amounts.Print(rule.least, "ac", 1))
            )
        );
}
