using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <content>The materials of the table.</content>
public sealed partial class FertilizerMaterial
{
    private static readonly Catalog<FertilizerMaterial> Catalog = new(
        "fertilizer material",
        () => Table.Read("Fertilizers/Data/materials.csv", Material),
        m => m.Id,
        m => m.AnalysisStatus
    );

    private static readonly (string Column, PlantNutrient Nutrient)[] Columns =
    [
        ("n_pct", PlantNutrient.Nitrogen),
        ("p2o5_pct", PlantNutrient.Phosphate),
        ("k2o_pct", PlantNutrient.Potash),
        ("s_pct", PlantNutrient.Sulfur),
        ("ca_pct", PlantNutrient.Calcium),
        ("mg_pct", PlantNutrient.Magnesium),
        ("b_pct", PlantNutrient.Boron),
        ("zn_pct", PlantNutrient.Zinc),
        ("mn_pct", PlantNutrient.Manganese),
        ("cl_pct", PlantNutrient.Chlorine),
    ];

    /// <summary>Gets the materials whose analysis was read in a publication, in the order of the table.</summary>
    public static ImmutableArray<FertilizerMaterial> All => Catalog.All;

    /// <summary>Gets the materials whose analysis is from memory; see <see cref="AnalysisCaution"/>.</summary>
    internal static ImmutableArray<FertilizerMaterial> Unchecked => Catalog.Unchecked;

    /// <summary>Finds a material, its analysis checked or not.</summary>
    /// <param name="id">Id such as <c>urea-granular</c>.</param>
    /// <returns>The material.</returns>
    /// <exception cref="KeyNotFoundException">No material has this id; the message lists all.</exception>
    public static FertilizerMaterial Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a material, its analysis checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The material, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out FertilizerMaterial? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>The substance of the straight material with this grade; a mixture when there is none.</summary>
    internal static FertilizerSubstance SubstanceOf(FertilizerAnalysis analysis)
    {
        foreach (var material in Catalog.Everything)
        {
            if (material.Substance != FertilizerSubstance.Mixture && SameGrade(material.Whole, analysis))
            {
                return material.Substance;
            }
        }

        return FertilizerSubstance.Mixture;
    }

    /// <summary>The compound a trade name stands for, such as <c>urea</c>; null for other names.</summary>
    internal static FertilizerSubstance? SubstanceNamed(string name)
    {
        string wanted = name.Trim();
        foreach (var (substance, word) in FertilizerWords.Substances.All)
        {
            if (substance != FertilizerSubstance.Mixture && word.Equals(wanted, StringComparison.OrdinalIgnoreCase))
            {
                return substance;
            }
        }

        foreach (var material in Catalog.Everything)
        {
            if (
                material.Substance != FertilizerSubstance.Mixture
                && material.Name.Equals(wanted, StringComparison.OrdinalIgnoreCase)
            )
            {
                return material.Substance;
            }
        }

        return null;
    }

    /// <summary>Same three numbers, and the other nutrients on the label do not speak against it.</summary>
    private static bool SameGrade(FertilizerAnalysis material, FertilizerAnalysis label) =>
        PrimarySum(label) > 0
        && Enumerable
            .Range(0, 3)
            .All(i => Tolerance.AreEqual(material.Percent((PlantNutrient)i), label.Percent((PlantNutrient)i)))
        && label.Holds.All(n => material.Percent(n) > 0);

    private static FertilizerMaterial Material(CsvRow row)
    {
        var whole = Columns
            .Where(c => row.Number(c.Column) > 0)
            .Aggregate(FertilizerAnalysis.FromPercent(0, 0, 0), (held, c) => held.With(c.Nutrient, row.Number(c.Column)));
        ImmutableArray<string> fromMemory =
            row.ChoiceOrNull<DataStatus>("other_status") == DataStatus.Memory ? row.List("other_nutrients") : [];
        var analysis = fromMemory.Aggregate(whole, (held, symbol) => held.With(PlantNutrients.WithSymbol(symbol)!.Value, 0));

        var figures = new CatalogFigure?[FertilizerWords.Properties.Count];
        Add(MaterialProperty.BulkDensityLow, "bulk_density_low_lb_per_ft3", "bulk_density");
        Add(MaterialProperty.BulkDensityHigh, "bulk_density_high_lb_per_ft3", "bulk_density");
        Add(MaterialProperty.LiquidDensity, "liquid_density_lb_per_gal", "liquid_density");
        Add(MaterialProperty.SaltIndex, "salt_index", "salt_index");
        Add(MaterialProperty.LimeValue, "caco3_lb_per_100_lb", "caco3");
        Add(MaterialProperty.CriticalHumidity, "critical_humidity_pct", "critical_humidity");
        return new FertilizerMaterial(
            row.Text("id"),
            row.Text("name"),
            row.Choice<FertilizerSubstance>("substance"),
            row.Choice<MaterialForm>("form"),
            analysis,
            whole,
            new Origin(row.Source("analysis_source_id"), row.Status("analysis_status"), row.Text("analysis_locator")),
            row.SourceOrNull("other_source_id"),
            figures
        );

        void Add(MaterialProperty property, string column, string prefix)
        {
            if (row.NumberOrNull(column) is { } value)
            {
                figures[(int)property] = new CatalogFigure(
                    value,
                    new(row.Source($"{prefix}_source_id"), row.Status($"{prefix}_status"))
                );
            }
        }
    }
}
