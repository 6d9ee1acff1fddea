using System.Collections.Immutable;
using FsCheck.Xunit;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

[Properties(Arbitrary = [typeof(PlotArbitraries), typeof(BlendArbitraries)])]
public class FitTests
{
    private static readonly string[] Clovers =
        ["ladino-clover", "white-dutch-clover", "alsike-clover", "medium-red-clover", "mammoth-red-clover", "crimson-clover", "berseem-clover", "arrowleaf-clover", "balansa-clover", "subterranean-clover", "persian-clover"];

    public static TheoryData<string> EveryClover => [.. Clovers];

    private static BlendComponent Of(string id) => BlendComponent.FromKind(SampleBlends.Kind(id), SowingMethod.Broadcast);

    private static Blend BlendOf(params (string Id, double Share)[] kinds) => Blend.FromSharesOfFullStand([.. kinds.Select(k => (Of(k.Id), k.Share))]);

    /// <summary>Ground of which only the pH and the drainage may be known.</summary>
    internal static PlotSoil Ground(double? ph = null, DrainageClass? drainage = null) =>
        PlotSoil.For(new SoilReport { Laboratory = "a laboratory", WaterPh = ph is { } known ? WaterPh.FromValue(known) : null }) with { Drainage = drainage };

    private static BlendFit Fit(Blend blend, BlendFitRequest? conditions = null) => BlendFit.For(blend.WeighFor(Area.FromAcres(0.5)), conditions);

    private static string[] CodesOf(Blend blend, BlendFitRequest? conditions = null) => [.. Fit(blend, conditions).Findings.Select(f => f.Code)];

    [Theory]
    [InlineData(6.1, true)]
    [InlineData(6.2, false)]
    [InlineData(8.0, false)]
    [InlineData(8.1, true)]
    public void The_plots_ph_must_lie_inside_what_every_kind_stands(double ph, bool outside)
    {
        // Ladino 5.8-8.0, alfalfa 6.2-8.5 (PLANTS).
        var blend = BlendOf(("ladino-clover", 0.5), ("alfalfa", 0.5));
        Assert.Equal(6.2, Fit(blend).LowestPh);
        Assert.Equal(8.0, Fit(blend).HighestPh);
        string[] codes = CodesOf(blend, new BlendFitRequest { Soil = Ground(ph) });
        Assert.Equal(outside && ph < 7, codes.Contains("blend-ph-low"));
        Assert.Equal(outside && ph > 7, codes.Contains("blend-ph-high"));
    }

    [Fact]
    public void Kinds_with_no_ph_in_common_are_apart()
    {
        var sour = SampleBlends.Kind("oats-spring") with { Ph = new PhTolerance { MinimumPh = 4, BestPhFrom = 4.5, BestPhTo = 5, MaximumPh = 5.5, Evidence = Origin.FromUser("invented") } };
        var blend = Blend.FromSharesOfFullStand((BlendComponent.FromKind(sour, SowingMethod.Broadcast), 0.5), (Of("alfalfa"), 0.5));
        Assert.Null(Fit(blend).LowestPh);
        Assert.Contains("blend-ph-apart", CodesOf(blend));
    }

    [Fact]
    public void Drainage_must_suit_every_kind()
    {
        var blend = BlendOf(("ladino-clover", 0.5), ("alfalfa", 0.5));
        Assert.Equal(DrainageClass.ModeratelyWell, Fit(blend).WettestDrainage);
        Assert.Equal(DrainageClass.Well, Fit(blend).DriestDrainage);
        Assert.Contains("blend-ground-wet", CodesOf(blend, new BlendFitRequest { Soil = Ground(drainage: DrainageClass.SomewhatPoor) }));
        Assert.DoesNotContain("blend-ground-wet", CodesOf(blend, new BlendFitRequest { Soil = Ground(drainage: DrainageClass.Well) }));
        // Japanese millet very poor to moderately well, cowpea well to somewhat excessive.
        Assert.Contains("blend-drainage-apart", CodesOf(BlendOf(("japanese-millet", 0.5), ("cowpea-iron-clay", 0.5))));
    }

    [Theory]
    [InlineData("purple-top-turnip")]
    [InlineData("rape-dwarf-essex")]
    [InlineData("kale")]
    public void Turnip_rape_and_kale_share_a_pass_with_clover(string brassica)
    {
        // Common practice.
        foreach (string clover in Clovers)
        {
            Assert.Single(Fit(BlendOf((clover, 0.7), (brassica, 0.2))).Passes);
        }
    }

    [Theory, MemberData(nameof(EveryClover))]
    public void Oats_do_not_share_a_pass_with_clover(string clover)
    {
        // Common practice; of crimson clover USDA, 1947: in two operations because the depths differ.
        foreach (string oats in new[] { "oats-spring", "oats-winter" })
        {
            var fit = Fit(BlendOf((clover, 0.7), (oats, 0.3)));
            Assert.Equal(2, fit.Passes.Length);
            Assert.Equal(oats, fit.Passes[0].Kinds[0].Kind!.Id);
            Assert.Contains(fit.Findings, f => f.Code == "blend-passes");
        }
    }

    [Theory, MemberData(nameof(EveryClover))]
    public void The_spreading_room_parts_oats_and_clover_alike(string clover)
    {
        PassKind[] kinds = [PassKind.FromKind(SampleBlends.Kind(clover)), PassKind.FromKind(SampleBlends.Kind("oats-spring"))];
        Assert.Equal(2, SizeGrouping.Arrange(kinds).Groups.Length);
    }

    [Fact]
    public void One_hopper_of_kinds_with_no_depth_in_common_says_so()
    {
        // Sunn hemp 0.5-0.75 in, eastern gamagrass 1-1.5 in: both are covered, and their seeds are alike in size.
        var fit = Fit(Blend.FromSharesOfFullStand(SowingMethod.Drilled, KindShare.FromShare(SampleBlends.Kind("sunn-hemp"), 0.3), KindShare.FromShare(SampleBlends.Kind("eastern-gamagrass"), 0.5)));
        Assert.Null(Assert.Single(fit.Passes).Shallowest);
        Assert.Contains(fit.Findings, f => f.Code == "blend-pass-depths-apart");
        Assert.DoesNotContain("blend-pass-depths-apart", CodesOf(BlendOf(("daikon-radish", 0.3), ("winter-wheat", 0.5))));
    }

    [Fact]
    public void Chaffy_seed_goes_apart_from_smooth_seed() =>
        Assert.Equal(2, Fit(BlendOf(("big-bluestem", 0.5), ("purple-top-turnip", 0.2))).Passes.Length);

    [Fact]
    public void What_rests_on_memory_is_said()
    {
        // Ladino: depth, pH limits and nitrogen read. Kura clover: depth from memory. Lablab: nitrogen from memory.
        var read = Fit(BlendOf(("ladino-clover", 0.5))).Findings.Where(f => f.Code == "data-from-memory").Select(f => f.Text).ToArray();
        Assert.Contains(Fit(BlendOf(("kura-clover", 0.5))).Findings, f => f.Code == "data-from-memory" && f.Text.Contains("the sowing depths of Kura clover", StringComparison.Ordinal));
        Assert.DoesNotContain(read, t => t.Contains("depths", StringComparison.Ordinal) || t.Contains("pH limits", StringComparison.Ordinal) || t.Contains("nitrogen fixed", StringComparison.Ordinal));
        Assert.Contains(Fit(BlendOf(("lablab", 0.5))).Findings, f => f.Code == "data-from-memory" && f.Text.Contains("the nitrogen fixed of Lablab", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_passes_serve_the_five_drilled_kinds()
    {
        // By hand from seed weights 38, 25, 13 mg and 2.1, 0.6 mg: wheat, rye and radish; turnip and ladino.
        var passes = Fit(SampleBlends.FiveDrilled()).Passes;
        Assert.Equal(["winter-wheat,cereal-rye,forage-radish", "purple-top-turnip,ladino-clover"], passes.Select(p => string.Join(',', p.Kinds.Select(x => x.Kind!.Id))));
    }

    [Theory]
    [InlineData(0.10, 12)]
    [InlineData(0.25, 30)]
    [InlineData(0.50, 103.3333333333)]
    [InlineData(1.00, 250)]
    [InlineData(2.00, 250)]
    public void Ladino_fixes_by_its_share(double share, double pounds) =>
        Assert.Equal(pounds, Fit(BlendOf(("ladino-clover", share))).NitrogenFixed.PoundsPerAcre, 1e-9);

    [Fact]
    public void Clover_that_stands_already_fixes_too()
    {
        var standing = new BlendFitRequest { Standing = [KindShare.FromShare(SampleBlends.Kind("ladino-clover"), 0.25)] };
        Assert.Equal(30, Fit(BlendOf(("oats-spring", 0.5)), standing).NitrogenFixed.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void Nitrogen_works_against_legumes_and_its_lack_against_grain()
    {
        var both = BlendOf(("ladino-clover", 0.5), ("winter-wheat", 0.3));
        Assert.Contains("blend-nitrogen-conflict", CodesOf(both));
        Assert.Contains("blend-nitrogen-against-legumes", CodesOf(both, new BlendFitRequest { NitrogenPlanned = ApplicationRate.FromPoundsPerAcre(40) }));
        Assert.Contains("blend-nitrogen-hungry", CodesOf(both, new BlendFitRequest { NitrogenPlanned = ApplicationRate.Zero }));
        var clover = BlendOf(("ladino-clover", 0.8));
        Assert.DoesNotContain("blend-nitrogen-conflict", CodesOf(clover));
        Assert.DoesNotContain("blend-nitrogen-hungry", CodesOf(clover, new BlendFitRequest { NitrogenPlanned = ApplicationRate.Zero }));
    }

    [Theory]
    [InlineData(0.49, 0.5, false, false)]
    [InlineData(0.50, 0.5, false, false)]
    [InlineData(0.51, 0.5, true, false)]
    [InlineData(0.50, 0.49, false, true)]
    public void Crimson_clover_keeps_its_room_beside_rye(double rye, double crimson, bool tooMuch, bool tooThin)
    {
        // Companion one third to one half, crimson one half to two thirds of normal (USDA, 1947).
        string[] codes = CodesOf(BlendOf(("crimson-clover", crimson), ("cereal-rye", rye)));
        Assert.Equal(tooMuch, codes.Contains("blend-companion-over-limit"));
        Assert.Equal(tooThin, codes.Contains("blend-host-thin"));
    }

    [Theory]
    [InlineData(1.0 / 3, 0.5, 0.83, true)]
    [InlineData(0.5, 2.0 / 3, 1.17, true)]
    [InlineData(1.0 / 3, 1.0, 1.33, true)]
    [InlineData(0.5, 1.0, 1.5, true)]
    [InlineData(0.55, 0.5, 1.05, false)]
    public void The_leaflets_on_crimson_clover_sum_to_these_totals(double companion, double crimson, double total, bool allowed)
    {
        // USDA crimson clover leaflets: companion 1/3-1/2 of normal with the clover at 1/2-2/3 (1947) or at the full rate (1938).
        var blend = BlendOf(("crimson-clover", crimson), ("hairy-vetch", companion));
        Assert.Equal(total, blend.StandTotal.Chosen, 0.005);
        Assert.Equal(allowed, !CodesOf(blend).Contains("blend-companion-over-limit"));
    }

    [Theory]
    [InlineData(0.25, false)]
    [InlineData(0.26, true)]
    public void A_late_seeding_takes_a_quarter_of_a_companion(double share, bool over)
    {
        // Companion at 20-25 % of its normal rate (Selecting Species of Cover Crop, 2003).
        var late = new BlendFitRequest { IsLateSeeding = true };
        var blend = BlendOf(("chicory", 0.6), ("oats-spring", share));
        Assert.Equal(over, CodesOf(blend, late).Contains("blend-companion-over-limit"));
        Assert.DoesNotContain("blend-companion-over-limit", CodesOf(blend));
    }

    [Theory]
    [InlineData(40, false, false)]
    [InlineData(41, false, true)]
    [InlineData(20, true, false)]
    [InlineData(21, true, true)]
    public void A_grain_nurse_over_clover_is_weighed_in_pounds(double pounds, bool dry, bool over)
    {
        var blend = Blend.FromLiveRates((Of("ladino-clover"), SampleBlends.LiveBroadcast(4)), (Of("winter-wheat"), SampleBlends.LiveBroadcast(pounds)));
        Assert.Equal(over, CodesOf(blend, new BlendFitRequest { Soil = Ground() with { IsDryOrThin = dry } }).Contains("blend-companion-over-limit"));
    }

    [Fact]
    public void Each_legume_names_its_inoculant_and_amount()
    {
        var batch = Blend.FromBatch(Area.FromAcres(1), (Of("austrian-winter-pea"), BulkSeedMass.FromPounds(25)), (Of("ladino-clover"), BulkSeedMass.FromPounds(4)), (Of("oats-spring"), BulkSeedMass.FromPounds(40))).WeighFor(Area.FromAcres(1));
        var fit = BlendFit.For(batch);
        Mass generous = fit.Inoculants[0].AtThoroughRate;
        double ounces = generous.Ounces;

        Assert.Equal(2, fit.Inoculants.Length);
        Assert.Equal(6, ounces, 1e-9);
        Assert.Contains(fit.Findings, f => f.Code == "blend-inoculants");
        var inoculated = Blend.FromBatch(Area.FromAcres(1), (Of("ladino-clover") with { IsInoculated = true }, BulkSeedMass.FromPounds(4)));
        Assert.Empty(BlendFit.For(inoculated.WeighFor(Area.FromAcres(1))).Inoculants);
    }

    [Fact]
    public void Published_dates_in_common_are_found_and_a_day_outside_is_named()
    {
        // South: crimson Aug 15 - Oct 1, Aug 25 - Oct 31 and Sep 1 - Oct 15; wheat Aug 15 - Oct 15, Sep 1 - Nov 1 and Sep 15 - Oct 30.
        // What opens them on Aug 1 names months only.
        var blend = BlendOf(("crimson-clover", 0.5), ("winter-wheat", 0.4));
        var range = Assert.Single(CommonDates.For(blend, PlantingRegion.Find("south")).Ranges);
        Assert.Equal((8, 15), (range.From.Month, range.From.Day));
        Assert.Equal((10, 31), (range.To.Month, range.To.Day));
        BlendFitRequest On(int month, int day) => new() { Region = PlantingRegion.Find("south"), SowingDay = new DateOnly(2026, month, day) };
        Assert.DoesNotContain("blend-date-late", CodesOf(blend, On(10, 31)));
        Assert.Contains("blend-date-late", CodesOf(blend, On(11, 2)));
        Assert.Contains("blend-date-early", CodesOf(blend, On(8, 1)));
        Assert.Contains("blend-out-of-season", CodesOf(blend, On(12, 24)));
        Assert.Contains("blend-no-dates", CodesOf(BlendOf(("sunn-hemp", 0.5)), On(6, 1)));
    }

    /// <summary>Southern wheat opens on 15 August in one guide to plots, on 1 September in another, and from 15 September in four others.</summary>
    [Theory]
    [InlineData(8, 20, true)]
    [InlineData(9, 1, true)]
    [InlineData(10, 1, false)]
    [InlineData(8, 1, false)]
    public void An_early_day_that_few_publications_allow_is_flagged(int month, int day, bool early)
    {
        var request = new BlendFitRequest { Region = PlantingRegion.Find("south"), SowingDay = new DateOnly(2026, month, day) };
        Assert.Equal(early, CodesOf(BlendOf(("winter-wheat", 0.5)), request).Contains("blend-date-early-edge"));
    }

    [Fact]
    public void Dates_that_never_meet_are_said()
    {
        // South: wheat from August 1, browntop millet April to July (Mississippi).
        var blend = BlendOf(("browntop-millet", 0.5), ("winter-wheat", 0.4));
        Assert.Empty(CommonDates.For(blend, PlantingRegion.Find("south")).Ranges);
        Assert.Contains("blend-no-common-day", CodesOf(blend, new BlendFitRequest { Region = PlantingRegion.Find("south") }));
    }

    [Fact]
    public void Nitrogen_fixed_is_called_an_estimate()
    {
        Assert.Contains("blend-nitrogen-estimated", CodesOf(BlendOf(("ladino-clover", 0.5))));
        Assert.DoesNotContain("blend-nitrogen-estimated", CodesOf(BlendOf(("winter-wheat", 0.5))));
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void The_report_reads_alike_everywhere(string culture)
    {
        var conditions = new BlendFitRequest { Soil = Ground(5.4, DrainageClass.Poor), Region = PlantingRegion.Find("south"), SowingDay = new DateOnly(2026, 12, 24), NitrogenPlanned = ApplicationRate.FromPoundsPerAcre(42.5), IsSeedLeftOnSurface = true };
        string Report()
        {
            var fit = Fit(BlendOf(("ladino-clover", 0.55), ("winter-wheat", 0.45), ("purple-top-turnip", 0.35)), conditions);
            var seasons = SeasonCoverage.For(fit.Batch.Blend);
            return string.Join("\n", [.. fit.Findings.Select(f => f.ToString()), .. fit.ShowWork().Select(w => w.ToString()), .. seasons.Findings.Select(f => f.ToString()), .. seasons.ShowWork().Select(w => w.ToString()),
                .. BagOrder.For(fit.Batch.Blend, Area.FromAcres(0.35)).ShowWork().Select(w => w.ToString()), .. BatchSpread.For(fit.Batch.Blend, BulkSeedMass.FromPounds(0.5)).ShowWork().Select(w => w.ToString()),
                Diversity.For(fit.Batch.Blend, BlendMeasure.LiveSeeds).ToString()]);
        }

        string here = Report();
        using (new CultureScope(culture))
        {
            Assert.Equal(here, Report());
        }

        Assert.Contains("42.5 lb/ac of nitrogen", here, StringComparison.Ordinal);
        Assert.Contains("2026-12-24 is no time to sow", here, StringComparison.Ordinal);
    }

    [Fact]
    public void Warm_and_cool_kinds_need_a_published_day_in_common()
    {
        Assert.Contains("blend-warm-and-cool", CodesOf(BlendOf(("cowpea-iron-clay", 0.5), ("winter-wheat", 0.4))));
        Assert.DoesNotContain("blend-warm-and-cool", CodesOf(BlendOf(("crimson-clover", 0.5), ("winter-wheat", 0.4))));
        // East Texas sows cowpea late in summer with grain (Fall-planted forage mixtures, Texas A&M University, 2019).
        Assert.DoesNotContain("blend-warm-and-cool", CodesOf(BlendOf(("cowpea-iron-clay", 0.5), ("winter-wheat", 0.4)), new BlendFitRequest { Region = PlantingRegion.Find("south") }));
    }

    [Fact]
    public void Poison_noxious_listings_and_bloat_are_raised()
    {
        string[] sorghum = CodesOf(BlendOf(("sorghum-sudangrass", 0.2), ("cowpea-iron-clay", 0.6)));
        Assert.Contains("blend-poison", sorghum);
        Assert.Contains("blend-residue", sorghum);
        Assert.Contains("blend-noxious", CodesOf(BlendOf(("birdsfoot-trefoil", 0.6))));
        Assert.Contains("blend-livestock", CodesOf(BlendOf(("alsike-clover", 0.6))));
        Assert.DoesNotContain(Fit(BlendOf(("pearl-millet", 0.6))).Findings, f => f.Text.StartsWith("Prussic", StringComparison.Ordinal));
    }

    [Fact]
    public void Grain_on_the_surface_is_a_warning_and_covered_grain_is_not()
    {
        var onTop = new BlendFitRequest { IsSeedLeftOnSurface = true };
        Assert.Contains("blend-grain-on-surface", CodesOf(BlendOf(("winter-wheat", 0.5)), onTop));
        Assert.Contains("blend-grain-on-surface", CodesOf(BlendOf(("austrian-winter-pea", 0.5)), onTop));
        Assert.DoesNotContain("blend-grain-on-surface", CodesOf(BlendOf(("winter-wheat", 0.5))));
        Assert.DoesNotContain("blend-grain-on-surface", CodesOf(BlendOf(("ladino-clover", 0.5)), onTop));
    }

    [Fact]
    public void Treated_seed_must_not_lie_on_the_surface()
    {
        var treated = Blend.FromSharesOfFullStand((Of("austrian-winter-pea") with { IsTreated = true }, 0.5));
        Assert.Contains("blend-treated-on-surface", CodesOf(treated));
        Assert.Contains("seed-treated-legume", CodesOf(treated));
        Assert.DoesNotContain("seed-treated", CodesOf(BlendOf(("austrian-winter-pea", 0.5))));
    }

    [Property]
    public bool Every_kind_is_in_one_pass_and_suits_the_others_there(BlendSketch sketch)
    {
        var passes = Fit(sketch.Blend).Passes;
        return passes.SelectMany(p => p.Kinds).Select(p => p.Kind!.Id).Order().SequenceEqual(sketch.Blend.Parts.Select(p => p.Kind.Id).Order())
            && passes.All(p => p.Kinds.Max(x => x.MilligramsPerSeed) <= p.Kinds.Min(x => x.MilligramsPerSeed) * 8 * (1 + 1e-8)
                && p.Kinds.Select(x => (x.Chaffy, InchesOf(x.Kind!.Depth!.Deepest) > 0.5)).Distinct().Count() == 1
                && (p.Shallowest is not { } from || p.Deepest is not { } to || InchesOf(from) <= InchesOf(to)));
    }

    [Property]
    public bool Order_does_not_change_the_fit(BlendSketch sketch)
    {
        var backward = Blend.FromSharesOfFullStand([.. sketch.Kinds.Reverse()]);
        BlendFit one = Fit(sketch.Blend), other = Fit(backward);
        return one.LowestPh == other.LowestPh && one.WettestDrainage == other.WettestDrainage && one.Passes.Length == other.Passes.Length
            && Near.Equal(one.NitrogenFixed.PoundsPerAcre, other.NitrogenFixed.PoundsPerAcre)
            && one.Findings.Select(f => f.Code).Order().SequenceEqual(other.Findings.Select(f => f.Code).Order());
    }

    [Property]
    public bool More_of_a_legume_never_fixes_less(Fraction less, Fraction more)
    {
        double low = Math.Min(less.Value, more.Value) + 0.01, high = Math.Max(less.Value, more.Value) + 0.01;
        return Fit(BlendOf(("ladino-clover", low))).NitrogenFixed <= Fit(BlendOf(("ladino-clover", high))).NitrogenFixed;
    }

    private static double InchesOf(Length length)
    {
        double inches = length.Inches;
        return inches;
    }
}
