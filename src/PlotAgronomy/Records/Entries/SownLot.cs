using PlotAgronomy.Seeds;

namespace PlotAgronomy.Records;

/// <summary>A lot that was sown, and how much of it really went out.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed record SownLot
{
    /// <summary>Gets the lot.</summary>
    public required SeedLot Lot
    {
        get;
        init => field = Guard.NotNull(value, nameof(Lot));
    }

    /// <summary>Gets the bulk weight that went out: what was weighed in, less what came back.</summary>
    public required BulkSeedMass Used
    {
        get;
        init
        {
            Guard.Above(value.Pounds, 0, "lb", nameof(Used));
            field = value;
        }
    }

    /// <summary>Gets the living seed in it, by the rule of its kind.</summary>
    public PureLiveSeedMass Living => PureLiveSeed.Held(Used, Lot.Analysis, ViabilityRule.For(Lot.Kind));

    /// <summary>The lot and its weight.</summary>
    /// <returns>Text such as <c>12 lb bulk of crimson clover</c>.</returns>
    public override string ToString() => $"{Used} of {Lot.Kind.ShortName}";

    internal void Write(FieldWriter to)
    {
        var analysis = Lot.Analysis;
        to.Text("kind", Lot.Kind.Id);
        to.Text("lot", Lot.Label);
        to.Quantity("used", Used.Pounds, "lb");
        to.Value<Fraction>("pure", analysis.PureSeed);
        to.Value<Fraction>("germination", analysis.Germination);
        to.Value("hard", Stated(analysis.HardSeed));
        to.Value("dormant", Stated(analysis.DormantSeed));
        to.Value("coating", Stated(analysis.Coating));
        to.Number("seeds-tested", analysis.SeedsTested);
        to.Number("seeds-per-lb", Lot.OwnSeedCount?.SeedsPerPound);
        to.Value("tested", Lot.TestMonth);
        to.Flag("treated", Lot.IsTreated ? true : null);
        to.Flag("inoculated", Lot.IsPreinoculated ? true : null);
    }

    internal static SownLot Read(FieldReader from)
    {
        var kind = from.Kind("kind");
        string label = from.Text("lot");
        double used = from.Quantity("used", "lb");
        var pure = from.ValueOrNull<Fraction>("pure") ?? throw from.Problem("pure", "is missing");
        var germination = from.ValueOrNull<Fraction>("germination") ?? throw from.Problem("germination", "is missing");
        var hard = from.ValueOrNull<Fraction>("hard") ?? default;
        var dormant = from.ValueOrNull<Fraction>("dormant") ?? default;
        var coating = from.ValueOrNull<Fraction>("coating") ?? default;
        int? tested = from.WholeOrNull("seeds-tested");
        double? count = from.NumberOrNull("seeds-per-lb");
        var month = from.ValueOrNull<TestMonth>("tested");
        bool treated = from.FlagOrNull("treated") ?? false;
        bool inoculated = from.FlagOrNull("inoculated") ?? false;
        return from.Try("lot", () => new SownLot
        {
            Lot = new()
            {
                Label = label,
                Kind = kind,
                Analysis = SeedAnalysis.FromFractions(pure, germination, hard, dormant, coating, tested),
                OwnSeedCount = count is { } own ? SeedCount.FromSeedsPerPound(own) : null,
                TestMonth = month,
                IsTreated = treated,
                IsPreinoculated = inoculated,
            },
            Used = BulkSeedMass.FromPounds(used),
        });
    }

    private static Fraction? Stated(Fraction part) => part == Fraction.Zero ? null : part;
}
