using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Sulfur to lower a soil's pH by the two tables known, which differ two- to threefold and are kept apart.</summary>
public sealed class SulfurNeed : IWorkedResult
{
    private static readonly Lazy<ImmutableArray<CsvRow>> Rows = new(() =>
        CsvTable
            .Embedded(
                "Liming/Data/sulfur.csv",
                "table",
                "textures",
                "from_ph_low",
                "from_ph_high",
                "to_ph_low",
                "to_ph_high",
                "rate",
                "unit",
                "per_ph_unit",
                "source_id",
                "locator",
                "status"
            )
            .Rows
    );

    private SulfurNeed() { }

    /// <summary>Gets the rate by the Royal Horticultural Society's table, from pH 7.0-7.5 to 6.0-6.5 only; null outside
    /// it.</summary>
    public ApplicationRate? BySociety { get; private init; }

    /// <summary>Gets the rate by a garden table for each pH unit (PRACTICE); null with free lime.</summary>
    public ApplicationRate? ByGardenPractice { get; private init; }

    /// <summary>Gets the pounds of carbonate that a pound of sulfur offsets, by stoichiometry: 3.12.</summary>
    public static double CarbonatePerSulfur => LimingCompound.Find("calcite").MolarMassGrams / AtomicMasses.Of("S");

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds => ["LIME-S34", "PRACTICE"];

    /// <summary>Asks both tables.</summary>
    /// <param name="soilPh">pH now.</param>
    /// <param name="targetPh">pH aimed at; below the pH now, at least 4.</param>
    /// <param name="texture">Texture.</param>
    /// <param name="hasFreeLime">Whether the soil fizzes with acid: then its pH cannot be lowered.</param>
    /// <returns>Both rates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A target below 4 or not below the pH now.</exception>
    public static SulfurNeed For(WaterPh soilPh, double targetPh, SoilTexture texture, bool hasFreeLime = false)
    {
        ArgumentNullException.ThrowIfNull(soilPh);
        Guard.Defined(texture);
        Guard.Between(targetPh, 4, Math.BitDecrement(soilPh.Value), "pH");
        return new SulfurNeed
        {
            BySociety = hasFreeLime ? null : Rate(Rows.Value.FirstOrDefault(r => Fits(r, "no") && InBand(r)), 1),
            ByGardenPractice = hasFreeLime ? null : Rate(Rows.Value.First(r => Fits(r, "yes")), soilPh.Value - targetPh),
            Findings = [FindingCatalog.Create("lime-lower-ph-doubtful")],
        };

        bool Fits(CsvRow row, string perUnit) =>
            row.Text("per_ph_unit") == perUnit && row.Choices<SoilTexture>("textures").Contains(texture);

        bool InBand(CsvRow row) =>
            soilPh.Value >= row.Number("from_ph_low")
            && soilPh.Value <= row.Number("from_ph_high")
            && targetPh >= row.Number("to_ph_low")
            && targetPh <= row.Number("to_ph_high");
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. BySociety is { } society
                ? new[]
                {
                    new WorkedLine(
                        "Sulfur",
                        "table, from pH 7.0-7.5 to 6.0-6.5",
                        Amounts.Print(society, "lb/1000 ft2", 1),
                        "LIME-S34"
                    ),
                }
                : [],
            .. ByGardenPractice is { } garden
                ? new[]
                {
                    new WorkedLine("Sulfur", "garden table x pH units", Amounts.Print(garden, "lb/1000 ft2", 1), "PRACTICE"),
                }
                : [],
        ];

    private static ApplicationRate? Rate(CsvRow? row, double phUnits) =>
        row is null ? null
        : row.Text("unit") == "g/m2" ? ApplicationRate.FromKilogramsPerHectare(row.Number("rate") * 10 * phUnits)
        : ApplicationRate.FromPoundsPerAcre(LimeUnits.PoundsPerAcre(row, "rate") * phUnits);
}
