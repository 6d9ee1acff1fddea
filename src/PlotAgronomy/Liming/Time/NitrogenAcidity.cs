using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The acid that nitrogen fertilizer adds, as the calcium carbonate that would neutralize it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NitrogenAcidity : IWorkedResult
{
    private static readonly Catalog<Figure> Figures = new(
        "nitrogen fertilizer",
        () => Table.Read("Liming/Data/n-acidity.csv", Figure.FromRow),
        f => f.Id,
        f => f.Origin.Status
    );

    private readonly Figure figure;

    private NitrogenAcidity(Figure figure) => this.figure = figure;

    /// <summary>Gets the ids of the fertilizers it knows.</summary>
    public static ImmutableArray<string> Fertilizers => [.. Figures.Everything.Select(f => f.Id)];

    /// <summary>Gets the id of the fertilizer.</summary>
    public string Fertilizer => figure.Id;

    /// <summary>Gets the convention.</summary>
    public required AcidityConvention Convention { get; init; }

    /// <summary>Gets the nitrogen applied.</summary>
    public required ApplicationRate Nitrogen { get; init; }

    /// <summary>Gets the pounds of calcium carbonate for each pound of nitrogen, a pure number; below zero for a fertilizer that
    /// leaves base.</summary>
    public required double CarbonatePerNitrogen { get; init; }

    /// <summary>Gets the pure calcium carbonate that would neutralize the acid; zero for a fertilizer that leaves base.</summary>
    public ApplicationRate Carbonate =>
        ApplicationRate.FromPoundsPerAcre(LimeTimes.CarbonateForAcid(Nitrogen.PoundsPerAcre, CarbonatePerNitrogen));

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([
            FindingCatalog.Create(LimingCodes.AcidityAglime),
            .. IsPublished && figure.Origin.Status == DataStatus.Memory
                ? new[] { MemoryGate.FindingFor($"the acidity of {figure.Name}", figure.Origin) }
                : [],
        ]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => (IsPublished ? figure.Origin : AtomicMasses.Origin).Sources;

    /// <summary>Acid of one fertilizer.</summary>
    /// <param name="fertilizer">Id, such as <c>urea</c>.</param>
    /// <param name="nitrogen">Nitrogen applied.</param>
    /// <param name="convention">Convention.</param>
    /// <returns>The acidity.</returns>
    /// <exception cref="KeyNotFoundException">No such fertilizer; the message lists all.</exception>
    /// <exception cref="ArgumentException">The convention has no figure for this fertilizer.</exception>
    /// <remarks>Published: lb carbonate per lb N of the table. All acid stays: hydrogen ions per N x M(CaCO3) / 2 / M(N):
    /// 3.57 for urea, 7.15 for ammonium sulfate.</remarks>
    public static NitrogenAcidity For(string fertilizer, ApplicationRate nitrogen, AcidityConvention convention)
    {
        Guard.Defined(convention);
        var figure = Figures.Find(fertilizer);
        double factor =
            convention == AcidityConvention.PlantsTakeUpNitrate
                ? figure.CarbonatePerNitrogen
                : LimeTimes.CarbonatePerNitrogen(
                    figure.HydrogenIonsPerNitrogen
                        ?? throw new ArgumentException($"The worst case has no figure for {figure.Name}.", nameof(convention)),
                    CarbonateMass,
                    NitrogenMass
                );
        return new NitrogenAcidity(figure)
        {
            Convention = convention,
            Nitrogen = nitrogen,
            CarbonatePerNitrogen = factor,
        };
    }

    /// <summary>Acid of a fertilizer by its name in words, as published for planning; null when none is applied or none is
    /// published for it.</summary>
    internal static NitrogenAcidity? Find(string name, ApplicationRate nitrogen) =>
        nitrogen > ApplicationRate.Zero && Figures.Everything.FirstOrDefault(f => f.InWords == name) is { } figure
            ? For(figure.Id, nitrogen, AcidityConvention.PlantsTakeUpNitrate)
            : null;

    /// <summary>How far the pH falls when nothing is done.</summary>
    /// <param name="capacity">Lime buffer capacity of the soil.</param>
    /// <param name="depth">Depth that shares the acid; above 0, at most 24 inches.</param>
    /// <returns>Fall in pH units, at least 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A capacity of zero, or a depth outside its range.</exception>
    /// <remarks>fall = lb carbonate per acre / (capacity x million lb of soil per acre); 0.3 million lb to the inch
    /// (PRACTICE).</remarks>
    public double PhFall(LimeBufferCapacity capacity, Length depth)
    {
        double inches = depth.Inches;
        LimeLimits.Depth(inches, nameof(depth));
        double perPh = Guard.Above(capacity.MilligramsPerKilogramPerPh, 0, "mg/kg per pH", nameof(capacity));
        return LimeTimes.PhFall(Carbonate.PoundsPerAcre, perPh, inches, LimingConstants.All["soil-per-inch"]);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        !IsPublished && figure.HydrogenIonsPerNitrogen is { } ions
            ?
            [
                LimingFormulas
                    .All["nitrogen-acidity-all"]
                    .Line(
                        Amounts.Print(CarbonatePerNitrogen, 2),
                        ("hydrogen ions per nitrogen", Amounts.Print(ions, 2)),
                        ("mass of carbonate", Amounts.Print(CarbonateMass, 3)),
                        ("mass of nitrogen", Amounts.Print(NitrogenMass, 3))
                    )
                    .From(AtomicMasses.Origin),
                AcidLine,
            ]
            : [AcidLine.From(figure.Origin)];

    private bool IsPublished => Convention == AcidityConvention.PlantsTakeUpNitrate;

    private static double CarbonateMass => LimingCompound.Calcite.MolarMassGrams;

    private static double NitrogenMass => AtomicMasses.Of("N");

    private WorkedLine AcidLine =>
        LimingFormulas
            .All["nitrogen-acidity"]
            .Line(
                Amounts.Print(Carbonate, "lb/ac", 1),
                ("fertilizer", figure.Name),
                ("nitrogen", Amounts.Print(Nitrogen, "lb/ac", 1)),
                ("carbonate for a pound of nitrogen", Amounts.Print(CarbonatePerNitrogen, 2))
            );

    private sealed record Figure(
        string Id,
        string Name,
        double CarbonatePerNitrogen,
        double? HydrogenIonsPerNitrogen,
        Origin Origin
    )
    {
        internal string InWords => Name.Replace('-', ' ');

        internal static Figure FromRow(CsvRow row) =>
            new(
                row.Text("id"),
                row.Text("name"),
                row.Number("published_lb_carbonate_per_lb_n"),
                row.NumberOrNull("hydrogen_ions_per_n"),
                row.Origin()
            );
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
