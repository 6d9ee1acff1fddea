using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Lime where the tests ask for it, against one rate over everything.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeByTest : IWorkedResult
{
    private LimeByTest() { }

    /// <summary>Gets the plots with their needs.</summary>
    public required ImmutableArray<LimePlotNeed> Plots { get; init; }

    /// <summary>Gets the one rate over everything.</summary>
    public required LimeRate BlanketRate { get; init; }

    /// <summary>Gets the day of the decision; null leaves the age of the reports out.</summary>
    public DateOnly? Today { get; private init; }

    /// <summary>Gets the material that both ways are counted in.</summary>
    public required LimingMaterial Material { get; init; }

    /// <summary>Gets the mass of material by test.</summary>
    public required Mass ByTest { get; init; }

    /// <summary>Gets the mass of material for one rate over everything.</summary>
    public required Mass Blanket { get; init; }

    /// <summary>Gets what the blanket puts on where no test asks for it.</summary>
    public required Mass Wasted { get; init; }

    /// <summary>Gets what the blanket leaves short where a test asks for more.</summary>
    public required Mass LeftShort { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder([.. Waste(Wasted.Pounds), .. Plots.SelectMany(p => Age(p, Today)), .. Shared(Plots)]);

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [.. Plots.SelectMany(p => p.Rate?.Basis.Origin.Sources ?? []).Union(BlanketRate.Basis.Origin.Sources)];

    /// <summary>Compares the two ways.</summary>
    /// <param name="plots">Plots with their needs; at least one.</param>
    /// <param name="blanket">The one rate over everything.</param>
    /// <param name="material">Material to count in.</param>
    /// <param name="today">Day of the decision, to look at the age of the reports; null leaves that out.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">No plots.</exception>
    /// <exception cref="InvalidOperationException">The material's figure in the index of a rate's basis is not known.</exception>
    public static LimeByTest Compare(
        IReadOnlyList<LimePlotNeed> plots,
        LimeRate blanket,
        LimingMaterial material,
        DateOnly? today = null
    )
    {
        Guard.NotEmpty(plots);
        ArgumentNullException.ThrowIfNull(blanket);
        ArgumentNullException.ThrowIfNull(material);
        double blanketPoundsPerAcre = blanket.RateOf(material).PoundsPerAcre;
        double byTest = 0,
            over = 0,
            under = 0,
            acres = 0;
        foreach (var plot in plots)
        {
            double area = plot.Area.Acres;
            double need = plot.Rate?.RateOf(material).PoundsPerAcre ?? 0;
            acres += area;
            byTest += need * area;
            over += Math.Max(0, blanketPoundsPerAcre - need) * area;
            under += Math.Max(0, need - blanketPoundsPerAcre) * area;
        }

        return new LimeByTest
        {
            Plots = [.. plots],
            BlanketRate = blanket,
            Today = today,
            Material = material,
            ByTest = Mass.FromPounds(byTest),
            Blanket = Mass.FromPounds(blanketPoundsPerAcre * acres),
            Wasted = Mass.FromPounds(over),
            LeftShort = Mass.FromPounds(under),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SumLine("By test, rate x area where a test asks for it", ByTest),
            SumLine("Blanket, one rate on all the area", Blanket),
            SumLine("Wasted, above what each plot needs", Wasted),
            SumLine("Left short, below what each plot needs", LeftShort),
        ];

    private static WorkedLine SumLine(string what, Mass mass) =>
        LimingFormulas.All["lime-over-plots"].Line(Amounts.Print(mass, "lb", 1), ("what", what));

    private static IEnumerable<Finding> Waste(double pounds) =>
        pounds > Tolerance.Dust ? [FindingCatalog.Create(LimingCodes.BlanketWaste, ("pounds", Amounts.Print(pounds, 0)))] : [];

    private static IEnumerable<Finding> Age(LimePlotNeed plot, DateOnly? today) =>
        plot.Report is { } report && today is { } day ? SampleChecks.OfAge(report, day) : [];

    private static IEnumerable<Finding> Shared(IReadOnlyList<LimePlotNeed> plots) =>
        plots
            .Where(p => p.Report is not null)
            .GroupBy(p => p.Report)
            .SelectMany(sharers =>
                sharers
                    .Skip(1)
                    .Select(p =>
                        FindingCatalog.Create(LimingCodes.ReportShared, ("plot", p.Name), ("other", sharers.First().Name))
                    )
            );

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
