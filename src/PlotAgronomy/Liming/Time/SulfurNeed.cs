using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Sulfur to lower a soil's pH by the two tables known, which differ two- to threefold and are kept apart.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SulfurNeed : IWorkedResult
{
    private static readonly Table<Row> Printed = new("Liming/Data/sulfur.csv", Row.FromCsv);

    private readonly Row? society;
    private readonly Row? garden;

    private SulfurNeed(WaterPh soilPh, double targetPh, Row? society, Row? garden)
    {
        SoilPh = soilPh;
        TargetPh = targetPh;
        this.society = society;
        this.garden = garden;
    }

    /// <summary>Gets the pH now.</summary>
    public WaterPh SoilPh { get; }

    /// <summary>Gets the pH aimed at.</summary>
    public double TargetPh { get; }

    /// <summary>Gets the texture.</summary>
    public required SoilTexture Texture { get; init; }

    /// <summary>Gets a value indicating whether the soil fizzes with acid.</summary>
    public required bool HasFreeLime { get; init; }

    /// <summary>Gets the rate by the Royal Horticultural Society's table, from pH 7.0-7.5 to 6.0-6.5 only; null outside
    /// it.</summary>
    internal ApplicationRate? BySociety => society?.Rate;

    /// <summary>Gets the rate by a garden table for each pH unit (PRACTICE); null with free lime.</summary>
    public ApplicationRate? ByGardenPractice =>
        garden is { } row
            ? ApplicationRate.FromPoundsPerAcre(LimeTimes.SulfurByPh(row.Rate.PoundsPerAcre, SoilPh.Value, TargetPh))
            : null;

    /// <summary>Gets the pounds of carbonate that a pound of sulfur offsets, by stoichiometry: 3.12.</summary>
    internal static double CarbonatePerSulfur => LimingCompound.Calcite.MolarMassGrams / AtomicMasses.Of("S");

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [FindingCatalog.Create(LimingCodes.LowerPhDoubtful)];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Printed.Rows.SelectMany(r => r.Origin.Sources).Distinct()];

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
        Guard.Between(targetPh, LimeLimits.LowestTargetPh, Math.BitDecrement(soilPh.Value), "pH");
        return new SulfurNeed(
            soilPh,
            targetPh,
            hasFreeLime ? null : Printed.Rows.FirstOrDefault(r => Fits(r, isPerPh: false) && InBand(r)),
            hasFreeLime ? null : Printed.Rows.First(r => Fits(r, isPerPh: true))
        )
        {
            Texture = texture,
            HasFreeLime = hasFreeLime,
        };

        bool Fits(Row row, bool isPerPh) => row.IsPerPhUnit == isPerPh && row.Textures.Contains(texture);

        bool InBand(Row row) =>
            soilPh.Value >= row.FromPhLow
            && soilPh.Value <= row.FromPhHigh
            && targetPh >= row.ToPhLow
            && targetPh <= row.ToPhHigh;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. society is { } row
                ? new[]
                {
                    LimeTableLines.Row(
                        "Sulfur",
                        $"pH {LimeText.Ph(SoilPh.Value)} to {LimeText.Ph(TargetPh)}: {Amounts.Print(row.Rate, "lb/1000 ft2", 1)}",
                        row.Origin
                    ),
                }
                : [],
            .. garden is { } each && ByGardenPractice is { } rate
                ? new[]
                {
                    LimingFormulas
                        .All["sulfur-by-ph"]
                        .Line(
                            Amounts.Print(rate, "lb/1000 ft2", 1),
                            ("rate for a pH unit", Amounts.Print(each.Rate, "lb/1000 ft2", 1)),
                            ("pH", LimeText.Ph(SoilPh.Value)),
                            ("target", LimeText.Ph(TargetPh))
                        ),
                }
                : [],
        ];

    /// <summary>One rate of a table; a garden table gives it for each pH unit, whatever the pH.</summary>
    private sealed record Row(
        string TableName,
        ImmutableArray<SoilTexture> Textures,
        double? FromPhLow,
        double? FromPhHigh,
        double? ToPhLow,
        double? ToPhHigh,
        ApplicationRate Rate,
        bool IsPerPhUnit,
        Origin Origin
    )
    {
        internal static Row FromCsv(CsvRow row) =>
            new(
                row.Text("table"),
                row.Choices<SoilTexture>("textures"),
                row.NumberOrNull("from_ph_low"),
                row.NumberOrNull("from_ph_high"),
                row.NumberOrNull("to_ph_low"),
                row.NumberOrNull("to_ph_high"),
                row.Text("unit") == "g/m2"
                    ? ApplicationRate.FromKilogramsPerHectare(row.Number("rate") * 10)
                    : ApplicationRate.FromPoundsPerAcre(LimeUnits.PoundsPerAcre(row, "rate")),
                row.YesOrNo("per_ph_unit"),
                row.Origin()
            );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
