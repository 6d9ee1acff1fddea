using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(SeedArbitraries)])]
public class SeedProperties
{
    [Property]
    public bool Bulk_and_living_rates_go_to_and_fro(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule)
    {
        var bulk = PureLiveSeed.BulkRate(target, analysis, rule).Bulk;
        var back = PureLiveSeed.Delivered(bulk, analysis, rule);
        return Near.Equal(target.PoundsPerAcre, back.PoundsPerAcre) && back.Method == target.Method;
    }

    [Property]
    public bool Bulk_and_living_weights_go_to_and_fro(PositiveInt ounces, SeedAnalysis analysis, ViabilityRule rule)
    {
        var living = PureLiveSeedMass.FromPounds(ounces.Get / 16.0);
        return Near.Equal(living.Pounds, PureLiveSeed.Held(PureLiveSeed.BulkHolding(living, analysis, rule), analysis, rule).Pounds);
    }

    [Property]
    public bool The_bulk_rate_is_never_below_the_living_rate(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule) =>
        PureLiveSeed.BulkRate(target, analysis, rule).Bulk.PoundsPerAcre >= target.PoundsPerAcre;

    [Property]
    public bool Adding_dead_weight_never_lowers_the_bulk_rate(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule, Fraction filler)
    {
        double kept = 1 - filler.Value * 0.99;
        var diluted = SeedAnalysis.FromFractions(Fraction.FromValue(analysis.PureSeed.Value * kept), analysis.Germination, analysis.HardSeed, analysis.DormantSeed);
        return PureLiveSeed.BulkRate(target, diluted, rule).Bulk.PoundsPerAcre >= PureLiveSeed.BulkRate(target, analysis, rule).Bulk.PoundsPerAcre;
    }

    [Property]
    public bool Counting_more_seed_as_alive_never_raises_the_rate(PureLiveSeedRate target, SeedAnalysis analysis)
    {
        double Bulk(ViabilityRule rule) => PureLiveSeed.BulkRate(target, analysis, rule).Bulk.PoundsPerAcre;
        return Bulk(ViabilityRule.TotalViable) <= Bulk(ViabilityRule.GerminationAndHard)
            && Bulk(ViabilityRule.GerminationAndHard) <= Bulk(ViabilityRule.GerminationOnly)
            && Bulk(ViabilityRule.GerminationAndDormant) <= Bulk(ViabilityRule.GerminationOnly);
    }

    [Property]
    public bool Twice_the_area_takes_twice_the_seed(PureLiveSeedRate target, Area area)
    {
        double acres = area.Acres;
        return Near.Equal(2 * target.Over(area).Pounds, target.Over(Area.FromAcres(2 * acres)).Pounds);
    }

    [Property]
    public bool The_coating_named_on_a_tag_changes_no_rate(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule)
    {
        var silent = SeedAnalysis.FromFractions(analysis.PureSeed, analysis.Germination, analysis.HardSeed, analysis.DormantSeed);
        return PureLiveSeed.BulkRate(target, silent, rule).Bulk == PureLiveSeed.BulkRate(target, analysis, rule).Bulk;
    }

    [Property]
    public bool A_coated_lot_needs_what_its_bare_seed_needs_and_its_coating(PureLiveSeedRate target, SeedAnalysis bare, Fraction coating)
    {
        var share = Fraction.FromValue(coating.Value * 0.95);
        var coated = SeedAnalysis.FromPurityBeforeCoating(bare.PureSeed, share, bare.Germination);
        double plain = PureLiveSeed.BulkRate(target, bare, ViabilityRule.GerminationOnly).Bulk.PoundsPerAcre;
        return Near.Equal(plain / (1 - share.Value), PureLiveSeed.BulkRate(target, coated, ViabilityRule.GerminationOnly).Bulk.PoundsPerAcre);
    }

    [Property]
    public bool Seeds_per_square_foot_and_rates_go_to_and_fro(PureLiveSeedRate rate, PositiveInt seedsPerPound)
    {
        var count = SeedCount.FromSeedsPerPound(seedsPerPound.Get);
        return Near.Equal(rate.PoundsPerAcre, SeedDensity.FromRate(rate, count).RateOf(count, rate.Method).PoundsPerAcre);
    }

    [Property]
    public bool Row_feet_and_acres_go_to_and_fro(PositiveInt seedsPerAcre, PositiveInt inches) =>
        Near.Equal(seedsPerAcre.Get, SeedDensity.FromRows(SeedDensity.FromSeedsPerAcre(seedsPerAcre.Get).InRows(Length.FromInches(inches.Get)), Length.FromInches(inches.Get)).SeedsPerAcre);

    [Property]
    public bool The_unit_of_a_weighed_sample_does_not_matter(PositiveInt seeds, PositiveInt grams)
    {
        double inGrams = SeedCount.FromWeighedSample(seeds.Get, Mass.FromGrams(grams.Get)).SeedsPerPound;
        double inPounds = SeedCount.FromWeighedSample(seeds.Get, Mass.FromPounds(grams.Get / 453.59237)).SeedsPerPound;
        double byThousand = SeedCount.FromThousandSeedWeight(Mass.FromGrams(1000.0 * grams.Get / seeds.Get)).SeedsPerPound;
        return Near.Equal(inGrams, inPounds) && Near.Equal(inGrams, byThousand);
    }

    [Property]
    public bool A_test_lies_inside_its_own_range_and_Wilsons_inside_one_whole(GerminationTest test) =>
        test.Low <= test.Germination && test.Germination <= test.High && test.WilsonLow <= test.Germination && test.Germination.Value <= test.WilsonHigh.Value + 1e-12;

    [Property]
    public bool Testing_four_times_the_seeds_narrows_the_range(GerminationTest test)
    {
        var larger = GerminationTest.FromCount(test.Germinated * 4, test.Seeds * 4);
        return larger.High.Value - larger.Low.Value < test.High.Value - test.Low.Value;
    }

    [Property]
    public bool Seedlings_and_failures_mirror_each_other(GerminationTest test)
    {
        var mirror = GerminationTest.FromCount(test.Seeds - test.Germinated, test.Seeds);
        return Math.Abs(1 - mirror.High.Value - test.Low.Value) < 1e-12 && Math.Abs(1 - mirror.Low.Value - test.High.Value) < 1e-12;
    }

    /// <summary>The closed form of the exact range when every seed germinates: (0.025)^(1/n).</summary>
    [Property]
    public bool A_perfect_test_has_a_closed_form(PositiveInt seeds) =>
        Math.Abs(Math.Pow(0.025, 1.0 / seeds.Get) - GerminationTest.FromCount(seeds.Get, seeds.Get).Low.Value) < 1e-12;

    [Property]
    public bool The_parts_of_a_price_sum_to_it(SeedAnalysis analysis, ViabilityRule rule, PositiveInt cents)
    {
        var value = LotValue.For(Lot("a", analysis, cents.Get), rule);
        return value.ForLivingSeed + value.ForDeadSeed + value.ForCoating + value.ForFiller == value.PricePerPound
            && value.ForLivingSeed >= 0 && value.ForDeadSeed >= 0 && value.ForCoating >= 0 && value.ForFiller >= -0.0000000001m;
    }

    [Property]
    public bool The_order_of_lots_does_not_matter(SeedAnalysis a, SeedAnalysis b, SeedAnalysis c, PositiveInt p, PositiveInt q, PositiveInt r, PureLiveSeedRate target)
    {
        Offer<SeedLot>[] lots = [Lot("a", a, p.Get), Lot("b", b, q.Get), Lot("c", c, r.Get)];
        var forward = SeedLotComparison.Rank(lots, target).Ranked;
        var backward = SeedLotComparison.Rank([.. lots.Reverse()], target).Ranked;
        return forward.Select(x => x.Lot.Label).SequenceEqual(backward.Select(x => x.Lot.Label))
            && forward.Zip(forward.Skip(1)).All(pair => pair.First.CostPerAcre <= pair.Second.CostPerAcre);
    }

    [Property]
    public bool Every_ranked_lot_delivers_the_same_live_stand(SeedAnalysis a, SeedAnalysis b, PureLiveSeedRate target) =>
        SeedLotComparison.Rank([Lot("a", a, 100), Lot("b", b, 100)], target).Ranked
            .All(r => Near.Equal(target.PoundsPerAcre, PureLiveSeed.Delivered(r.Seeding.Bulk, r.Lot.Analysis, ViabilityRule.For(r.Lot.Kind)).PoundsPerAcre));

    [Property]
    public bool Raising_a_price_never_lowers_a_place(SeedAnalysis a, SeedAnalysis b, PositiveInt cents, PositiveInt more, PureLiveSeedRate target)
    {
        int Place(int price) => SeedLotComparison.Rank([Lot("a", a, price), Lot("b", b, cents.Get)], target).Ranked.Single(r => r.Lot.Label == "a").Place;
        return Place(cents.Get) <= Place(cents.Get + more.Get);
    }

    [Property]
    public bool A_tag_written_down_reads_back_the_same(CropKind kind, SeedAnalysis analysis)
    {
        string text = string.Create(CultureInfo.InvariantCulture, $"""
            Kind: {kind.Id}
            Pure seed {analysis.PureSeed.Percent:0.00} %
            Inert matter {100 - analysis.PureSeed.Percent:0.00} %
            Coating {analysis.Coating.Percent:0.00} %
            Germination {analysis.Germination.Percent:0.00} %
            Hard seed {analysis.HardSeed.Percent:0.00} %
            Dormant seed {analysis.DormantSeed.Percent:0.00} %
            """);
        var read = SeedTag.Read(text).Tag!;
        var back = read.Components[0].Analysis;
        return read.Components[0].Kind == kind && Same(back.PureSeed, analysis.PureSeed) && Same(back.Germination, analysis.Germination)
            && Same(back.HardSeed, analysis.HardSeed) && Same(back.DormantSeed, analysis.DormantSeed) && Same(back.Coating, analysis.Coating);
    }

    [Property]
    public bool The_reader_of_tags_never_throws(string text) => SeedTag.Read(text ?? "").Findings is not { IsDefault: true };

    [Property(MaxTest = 1000)]
    public Property Scraps_of_tags_are_read_or_refused_in_words() => Prop.ForAll(SeedArbitraries.ScrapsOfTags.ToArbitrary(), text =>
    {
        var reading = SeedTag.Read(text);
        return reading.Tag is null != reading.Problems.IsEmpty;
    });

    [Property]
    public bool Case_plural_and_the_order_of_words_do_not_change_a_kind(CropKind kind, bool plural, bool turned)
    {
        string name = kind.CommonName.Split('(')[0].Trim();
        string[] words = name.Split(' ');
        string written = turned && words.Length > 1 && !name.Contains(',', StringComparison.Ordinal) ? $"{words[^1]}, {string.Join(' ', words[..^1])}" : plural && words.Length == 1 ? name + (name[^1] is 's' or 'h' ? "es" : "s") : name;
        var plain = KindCatalog.Standard.Candidates(name).Select(k => k.Id);
        return plain.SequenceEqual(KindCatalog.Standard.Candidates(written.ToUpperInvariant()).Select(k => k.Id));
    }

    [Property]
    public bool Adding_a_kind_leaves_every_id_findable(CropKind known, CropKind other) =>
        KindCatalog.Standard.With(other with { Id = "own_kind", CommonName = "Own kind" }).Find(known.Id).Id == known.Id;

    [Property]
    public bool A_share_is_the_rate_over_the_full_rate_sown_the_same_way(CropKind kind, Fraction part, SowingMethod method)
    {
        if (kind.Rates?.For(method) is not { } full)
        {
            return method != SowingMethod.Drilled;
        }

        return full.Method == method && Near.Equal(part.Value, KindShare.FromRate(kind, full.Full * part.Value).ShareOfFullStand)
            && RateCheck.Against(kind, full.Full).OverTop <= 1;
    }

    [Property]
    public bool A_later_test_may_be_sold_later(int month, PositiveInt later)
    {
        int first = Math.Abs(month % 1200) + 24_000;
        int second = first + later.Get % 120;
        var early = TestMonth.FromYearAndMonth(first / 12, first % 12 + 1);
        var late = TestMonth.FromYearAndMonth(second / 12, second % 12 + 1);
        return TestDateRule.All.All(r => r.LastDay(early) <= r.LastDay(late));
    }

    [Property]
    public bool A_wetter_or_warmer_store_never_lengthens_life(Fraction a, Fraction b)
    {
        var now = Fraction.FromPercent(5 + a.Value * 9);
        var then = Fraction.FromPercent(5 + b.Value * 9);
        var warm = Temperature.FromDegreesFahrenheit(60);
        double factor = SeedStorage.LifeFactor(now, then, warm, warm);
        return (factor >= 1) == (then <= now) || Near.Equal(factor, 1, 1e-9);
    }

    private static bool Same(Fraction a, Fraction b) => Math.Abs(a.Value - b.Value) < 1e-9;

    private static Offer<SeedLot> Lot(string label, SeedAnalysis analysis, int cents) =>
        Offer.ByThePound(new SeedLot { Label = label, Kind = KindCatalog.Standard.Find("crimson"), Analysis = analysis }, cents / 100m);
}
