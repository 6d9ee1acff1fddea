using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>A named rule for how much nitrogen a crop or plot gets, and in how many dressings.</summary>
public sealed class NitrogenRule
{
    private static readonly Lazy<ImmutableArray<NitrogenRule>> Everything = new(Load);

    private readonly double? fixedLow;
    private readonly double? fixedHigh;
    private readonly bool yieldInPounds;
    private readonly ImmutableArray<(double Yield, double Pounds)> points;
    private readonly ImmutableArray<(string Size, string When, string SourceId)> split;

    private NitrogenRule(
        CsvRow row,
        ImmutableArray<(double Yield, double Pounds)> points,
        ImmutableArray<(string Size, string When, string SourceId)> split
    )
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Crops = row.Text("crops");
        Form = row.Choice<NitrogenForm>("form");
        string? unit = row.TextOrNull("yield_unit");
        yieldInPounds = unit == "pound";
        YieldUnit =
            unit is null ? null
            : unit == "bushel" ? Nutrients.YieldUnit.Bushel
            : Nutrients.YieldUnit.Ton;
        fixedLow = row.NumberOrNull("low");
        fixedHigh = row.NumberOrNull("high");
        Condition = row.TextOrNull("condition");
        SourceIds = [.. row.SourceId().Split(';')];
        Status = row.Status();
        this.points = points;
        this.split = split;
    }

    /// <summary>Gets every rule.</summary>
    public static ImmutableArray<NitrogenRule> All => Everything.Value;

    /// <summary>Gets the name to ask for.</summary>
    public string Id { get; }

    /// <summary>Gets the rule in words.</summary>
    public string Title { get; }

    /// <summary>Gets the crops it was made for, in words.</summary>
    public string Crops { get; }

    /// <summary>Gets how it is stated.</summary>
    public NitrogenForm Form { get; }

    /// <summary>Gets the unit of the yield it asks for, or null when it asks for none.</summary>
    public YieldUnit? YieldUnit { get; }

    /// <summary>Gets the condition it is printed with, or null.</summary>
    public string? Condition { get; }

    /// <summary>Gets the ids of the sources.</summary>
    public ImmutableArray<string> SourceIds { get; }

    /// <summary>Gets how well the rule is known.</summary>
    public DataStatus Status { get; }

    /// <summary>Finds a rule by its name.</summary>
    /// <param name="id">Name such as <c>mississippi-grain-plot</c>.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No rule has this name.</exception>
    public static NitrogenRule Named(string id) =>
        All.FirstOrDefault(r => r.Id == id)
        ?? throw new KeyNotFoundException(
            $"No nitrogen rule is named '{id}'; there are {string.Join(", ", All.Select(r => r.Id))}."
        );

    /// <summary>Answers for a crop.</summary>
    /// <param name="yield">Expected yield, for rules that go by one.</param>
    /// <param name="reduction">Pounds a printed condition takes off, such as 20 lb/ac on the Piedmont; null for none.</param>
    /// <returns>The nitrogen and its dressings; without a figure, and with a finding, when the yield is missing or outside the
    /// table.</returns>
    /// <exception cref="ArgumentException">The yield is in another unit than the rule's.</exception>
    public NitrogenAnswer Answer(CropYield? yield = null, ApplicationRate? reduction = null)
    {
        if (yield is { } given && YieldUnit is { } unit && given.Unit != unit)
        {
            throw new ArgumentException($"{Title} takes a yield in {unit}s per acre, found {given}.", nameof(yield));
        }

        var (low, high, findings) = Pounds(yield);
        if (low is not { } from || high is not { } to)
        {
            return new NitrogenAnswer(this, null, null, [], findings, yield);
        }

        double taken = reduction?.PoundsPerAcre ?? 0;
        double lowPounds = Math.Max(0, from - taken);
        double highPounds = Math.Max(0, to - taken);
        var doses = Split(lowPounds, highPounds);
        double largest = doses.Length == 0 ? highPounds : doses.Max(d => d.High.PoundsPerAcre);
        ImmutableArray<Finding> all =
            largest > NitrogenMath.LargestSingleDosePounds
                ? [.. findings, FindingCatalog.Create("nutrient-nitrogen-single-dose", ("rate", Amounts.Print(largest, 1)))]
                : findings;
        return new NitrogenAnswer(
            this,
            ApplicationRate.FromPoundsPerAcre(lowPounds),
            ApplicationRate.FromPoundsPerAcre(highPounds),
            doses,
            all,
            yield
        );
    }

    /// <summary>The rule's title.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;

    internal ImmutableArray<NitrogenDose> Split(double lowPounds, double highPounds)
    {
        if (highPounds <= 0)
        {
            return [];
        }

        var doses = ImmutableArray.CreateBuilder<NitrogenDose>();
        double lowLeft = lowPounds;
        double highLeft = highPounds;
        foreach (var (size, when, sourceId) in split)
        {
            double low = NitrogenMath.DosePounds(size, lowPounds, lowLeft);
            double high = NitrogenMath.DosePounds(size, highPounds, highLeft);
            lowLeft -= low;
            highLeft -= high;
            doses.Add(
                new NitrogenDose(ApplicationRate.FromPoundsPerAcre(low), ApplicationRate.FromPoundsPerAcre(high), when, sourceId)
            );
        }

        return doses.ToImmutable();
    }

    private (double? Low, double? High, ImmutableArray<Finding> Findings) Pounds(CropYield? yield)
    {
        if (Form == NitrogenForm.Fixed)
        {
            return (fixedLow, fixedHigh, []);
        }

        if (yield is not { } given)
        {
            return (null, null, [FindingCatalog.Create("nutrient-nitrogen-yield-needed", ("rule", Title))]);
        }

        if (Form == NitrogenForm.PerUnit)
        {
            return (fixedLow * given.PerAcre, fixedHigh * given.PerAcre, []);
        }

        double expected = yieldInPounds ? given.PerAcre * ExactUnits.PoundsPerShortTon : given.PerAcre;
        double first = points[0].Yield;
        double last = points[^1].Yield;
        if (expected < first || expected > last)
        {
            return (
                null,
                null,
                [
                    FindingCatalog.Create(
                        "nutrient-nitrogen-outside-table",
                        ("rule", Title),
                        ("low", Amounts.Print(first, 4)),
                        ("high", Amounts.Print(last, 4)),
                        ("unit", yieldInPounds ? "lb/ac" : "bu/ac"),
                        ("yield", Amounts.Print(expected, 4))
                    ),
                ]
            );
        }

        double pounds = Interpolation.Between(points.AsSpan(), expected);
        return (pounds, pounds, []);
    }

    private static ImmutableArray<NitrogenRule> Load()
    {
        var points = Table
            .Grouped(
                "Nutrients/Data/nitrogen-yields.csv",
                r => r.Text("rule"),
                r => (r.Number("yield"), r.Number("nitrogen_lb_per_ac"))
            )
            .Value;
        var splits = Table
            .Read("Nutrients/Data/nitrogen-doses.csv", r =>
                (Rule: r.Text("rule"), Part: r.Integer("part"), Dose: (r.Text("size"), r.Text("when"), r.SourceId()))
            )
            .OrderBy(d => d.Part)
            .ToLookup(d => d.Rule, d => d.Dose);
        return
        [
            .. Table.Read("Nutrients/Data/nitrogen-rules.csv", r => new NitrogenRule(
                r,
                [.. points[r.Text("id")]],
                [.. splits[r.Text("id")]]
            )),
        ];
    }
}
