using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves with a unit of yield by a system's own table: lb P2O5 and lb K2O per bushel or ton.</summary>
internal sealed record CropRemovalFigure(double PhosphatePerUnit, double PotashPerUnit, Origin Origin)
{
    private static readonly Lazy<IReadOnlyDictionary<(string, CropRow), CropRemovalFigure>> BySystem = Table.Keyed(
        "Nutrients/Data/system-removal.csv",
        r => (r.Text("system_id"), r.Choice<CropRow>("crop")),
        FromRow
    );

    private static CropRemovalFigure FromRow(CsvRow row)
    {
        if (row.Choice<YieldUnit>("yield_unit") != CropRows.UnitOf(row.Choice<CropRow>("crop")))
        {
            throw row.Problem("yield_unit", "differs from the unit of the crop's yield");
        }

        return new(row.Number("phosphate_lb_per_unit"), row.Number("potash_lb_per_unit"), row.Origin());
    }

    internal static CropRemovalFigure? Find(string systemId, CropRow crop) => BySystem.Value.GetValueOrDefault((systemId, crop));

    internal double PerUnit(PlantNutrient nutrient) => nutrient == PlantNutrient.Phosphate ? PhosphatePerUnit : PotashPerUnit;
}
