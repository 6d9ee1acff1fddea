using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What leaves with a unit of yield by a system's own table: lb P2O5 and lb K2O per bushel or ton.</summary>
internal sealed record CropRemovalFigure(double PhosphatePerUnit, double PotashPerUnit, string SourceId, DataStatus Status)
{
    private static readonly Lazy<FrozenDictionary<(string, CropRow), CropRemovalFigure>> BySystem = new(() =>
        CsvTable
            .Embedded(
                "Nutrients/Data/system-removal.csv",
                "id",
                "system",
                "crop",
                "unit",
                "phosphate_lb_per_unit",
                "potash_lb_per_unit",
                "source_id",
                "locator",
                "status"
            )
            .Rows.ToFrozenDictionary(
                r => (r.Text("system"), r.Choice<CropRow>("crop")),
                r => new CropRemovalFigure(
                    r.Number("phosphate_lb_per_unit"),
                    r.Number("potash_lb_per_unit"),
                    r.SourceId(),
                    r.Status()
                )
            )
    );

    internal static CropRemovalFigure? Find(string systemId, CropRow crop) => BySystem.Value.GetValueOrDefault((systemId, crop));

    internal double PerUnit(PlantNutrient nutrient) => nutrient == PlantNutrient.Phosphate ? PhosphatePerUnit : PotashPerUnit;
}
