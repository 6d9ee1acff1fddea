using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>How far the answers to a plan lie apart when one fact of it is this or that.</summary>
internal sealed class OutcomeSpan
{
    private readonly ImmutableArray<Outcome> outcomes;
    private readonly bool isMeasured;
    private readonly Lazy<string> inWords;

    /// <param name="answers">The answers.</param>
    /// <param name="isMeasured">Whether the fact may also lie between, so that two amounts are the ends of a range.</param>
    internal OutcomeSpan(IEnumerable<PlotAnswers> answers, bool isMeasured = false)
    {
        outcomes = [.. answers.Select(a => new Outcome(a))];
        this.isMeasured = isMeasured;
        LimeDiffers = Differs(
            (one, other) =>
                one.LimePackages == other.LimePackages
                && one.LimePounds.Equals(other.LimePounds)
                && one.LimeCost == other.LimeCost
        );
        FertilizerDiffers = Differs((one, other) => one.FertilizerCost == other.FertilizerCost);
        SeedDiffers = Differs((one, other) => one.SeedPounds.Equals(other.SeedPounds) && one.SeedCost == other.SeedCost);
        inWords = new(() => string.Join(", ", ((string?[])[Lime, .. Needs, Seeds, Money, Kinds]).OfType<string>()));
    }

    /// <summary>Least and most of what must be bought, over the parts that differ. An answer under which one of them cannot be
    /// bought from what is on offer has no price, and does not count as a cheap one.</summary>
    internal (decimal Low, decimal High) Cost =>
        outcomes.Select(CostOfWhatDiffers).OfType<decimal>().ToList() is { Count: > 0 } costs
            ? (costs.Min(), costs.Max())
            : default;

    internal (Mass Low, Mass High) Seed =>
        (Mass.FromPounds(outcomes.Min(o => o.SeedPounds)), Mass.FromPounds(outcomes.Max(o => o.SeedPounds)));

    /// <summary>Least and most packages of lime; null where no answer orders any in packages.</summary>
    internal (int Low, int High)? LimePackages =>
        outcomes.Select(o => o.LimePackages).OfType<int>().ToList() is { Count: > 0 } counts
            ? (counts.Min(), counts.Max())
            : null;

    /// <summary>Kinds that are held back in some of the answers alone.</summary>
    internal ImmutableArray<CropKind> Undecided =>
        [
            .. outcomes[0]
                .Plan.Kinds.Select(k => k.Kind)
                .Where(k => Differs((one, other) => one.Held.Contains(k) == other.Held.Contains(k))),
        ];

    /// <summary>Whether some of the answers come with a caution or a warning that others do not have.</summary>
    internal bool CautionsDiffer => Differs((one, other) => one.Cautions == other.Cautions);

    /// <summary>Everything that differs, most telling first, such as <c>28 or 57 bags of lime, 140 to 290 USD</c>; empty where
    /// nothing does.</summary>
    internal string InWords => inWords.Value;

    /// <summary>By how much they lie apart, for an order: money, seed, lime and nutrients, kinds.</summary>
    internal (decimal Money, double Seed, double Spread, int Kinds) Apart
    {
        get
        {
            var (low, high) = Cost;
            double seed = Seed.High.Pounds - Seed.Low.Pounds;
            double lime = outcomes.Max(o => o.LimePounds) - outcomes.Min(o => o.LimePounds);
            double needs = Outcome
                .Bought.Select(Need)
                .Sum(n => n is var (least, most) ? most.PoundsPerAcre - least.PoundsPerAcre : 0);
            return (high - low, seed, lime + needs, Undecided.Length);
        }
    }

    private decimal? CostOfWhatDiffers(Outcome outcome) =>
        Counted(LimeDiffers, o => o.LimeCost, outcome)
        + Counted(FertilizerDiffers, o => o.FertilizerCost, outcome)
        + Counted(SeedDiffers, o => o.SeedCost, outcome);

    /// <summary>A cost that is known under one answer alone has nothing to be compared with.</summary>
    private decimal? Counted(bool differs, Func<Outcome, decimal?> cost, Outcome outcome) =>
        differs && outcomes.Count(o => cost(o) is not null) > 1 ? cost(outcome) : 0;

    private bool Differs(Func<Outcome, Outcome, bool> isAlike) => !outcomes.All(other => isAlike(outcomes[0], other));

    private bool LimeDiffers { get; }

    private bool FertilizerDiffers { get; }

    private bool SeedDiffers { get; }

    private string? Lime
    {
        get
        {
            if (!LimeDiffers)
            {
                return Limes() is { Count: > 1 } rates ? Span(rates, "ton/ac of lime") : null;
            }

            var known = outcomes.Where(o => !o.IsLimeOpen).ToList();
            string? bought =
                known.Count == 0 ? null
                : known.All(o => o.LimePackages is not null)
                    ? Span(known.Select(o => (double)o.LimePackages!.Value), "bags of lime", 0)
                : Span(known.Select(o => o.LimePounds / PoundsPerTon), "ton of lime");
            return known.Count == outcomes.Length
                ? bought
                : $"{bought ?? "the lime"} ({Unordered(outcomes.Length - known.Count)})";
        }
    }

    private string Unordered(int count) =>
        $"{Amounts.Print(count, 0)} of {Amounts.Print(outcomes.Length, 0)} answers cannot be ordered from what is on offer";

    private IEnumerable<string?> Needs =>
        Outcome.Bought.Select(nutrient =>
            Need(nutrient) is var (low, high) && low != high
                ? Span(Rates(nutrient).Select(r => r.PoundsPerAcre), $"lb/ac of {PlantNutrients.Symbols[nutrient]}", 0)
                : null
        );

    /// <summary>One kind by its name, several together.</summary>
    private string? Seeds =>
        !SeedDiffers ? null
        : outcomes[0].Plan.Kinds is [{ Kind: var only }] ? Span(outcomes.Select(o => o.SeedPounds), $"lb of {only.ShortName}")
        : Span(outcomes.Select(o => o.SeedPounds), "lb of seed");

    private string? Money =>
        Cost is var (low, high) && low != high
            ? $"{outcomes[0].Plan.Currency.Print(low).Split(' ')[0]} to {outcomes[0].Plan.Currency.Print(high)}"
            : null;

    private string? Kinds =>
        Undecided is { IsEmpty: false } kinds ? $"whether {string.Join(", ", kinds.Select(k => k.ShortName))} may be sown" : null;

    private static double PoundsPerTon => Mass.FromShortTons(1).Pounds;

    /// <summary>Least and most that is needed of a nutrient; null where it is known under no answer.</summary>
    internal (ApplicationRate Low, ApplicationRate High)? Need(PlantNutrient nutrient)
    {
        (ApplicationRate Low, ApplicationRate High)? need = null;
        foreach (var rate in Rates(nutrient))
        {
            var (low, high) = need ?? (rate, rate);
            need = (rate < low ? rate : low, rate > high ? rate : high);
        }

        return need;
    }

    private IEnumerable<ApplicationRate> Rates(PlantNutrient nutrient)
    {
        int place = Outcome.Bought.IndexOf(nutrient);
        return place < 0 ? [] : outcomes.Select(o => o.Needs[place]).OfType<ApplicationRate>();
    }

    /// <summary>The rates of lime where none is ordered, if they are counted in one lime.</summary>
    private List<double> Limes()
    {
        var rates = outcomes.Select(o => o.LimeRate).OfType<Liming.LimeRate>().ToList();
        return rates.Select(r => r.Basis).Distinct().Count() == 1
            ? [.. rates.Select(r => r.OfBasis.ShortTonsPerAcre).Distinct()]
            : [];
    }

    private string? Span(IEnumerable<double> amounts, string unit, int decimals = 1)
    {
        var printed = amounts.Order().Select(a => a == 0 ? "none" : Amounts.Print(a, decimals)).Distinct().ToList();
        string between = printed.Count > 2 || isMeasured ? "to" : "or";
        return printed.Count == 1 ? null : $"{printed[0]} {between} {printed[^1]} {unit}";
    }
}
