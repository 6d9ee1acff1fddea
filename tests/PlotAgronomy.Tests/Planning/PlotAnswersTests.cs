using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Every room answers, says that nothing is needed, or asks.</summary>
public class PlotAnswersTests
{
    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    private static SoilReport Report(WaterPh? ph, params BufferPh[] buffers) =>
        new() { Laboratory = "the county laboratory", WaterPh = ph, BufferPhs = [.. buffers] };

    private static LimingMaterial Silent => LimingMaterial.FromAnalysis("field lime", LimingForm.GroundLimestone, 95);

    [Fact]
    public void A_whole_plan_is_given_throughout()
    {
        var answers = Demo.Solve();
        Assert.Equal(AnswerState.Given, answers.Need.State);
        Assert.Equal(AnswerState.Given, answers.Lime.State);
        Assert.Equal(AnswerState.Given, answers.Fertilizer.State);
        Assert.Equal(AnswerState.Given, answers.Seed.State);
        Assert.Equal(AnswerState.Given, answers.Spreading.State);
        Assert.Equal(answers.Questions.Length, answers.Questions.Distinct().Count());
    }

    [Fact]
    public void A_soil_at_its_target_needs_no_lime_and_says_so_by_a_rate_of_zero()
    {
        var lime = (Demo with { Report = Report(WaterPh.FromValue(7.4), BufferPh.FromValue(6.8, SoilBuffer.Mehlich)), Printed = null }).Solve().Lime;
        Assert.Equal(AnswerState.NoneNeeded, lime.State);
        Assert.Equal(ApplicationRate.Zero, lime.Value.Rate.Value.OfBasis);
        Assert.Equal(AnswerState.NoneNeeded, lime.Value.Order.State);
        Assert.Equal(AnswerState.NoneNeeded, lime.Value.Outlook.State);
    }

    [Fact]
    public void A_report_without_the_reading_leaves_the_lime_open_and_each_other_method_is_a_case()
    {
        var plan = Demo with { Report = Report(WaterPh.FromValue(5.2), BufferPh.FromValue(6.2, SoilBuffer.Sikora)), Printed = null };
        var lime = plan.Solve().Lime;
        Assert.Equal(AnswerState.Open, lime.State);
        Assert.Contains("lime-ask-reading", Assert.Throws<InvalidOperationException>(() => lime.Value).Message, StringComparison.Ordinal);
        Assert.True(lime.TryGetPart(out var part));
        Assert.Equal(AnswerState.Open, part!.Rate.State);
        Assert.NotEmpty(lime.Cases);
        foreach (var assumed in lime.Cases)
        {
            Assert.True(assumed.TryGetAssumed<LimeMethod>(out var method));
            var asked = (plan with { LimeMethod = method! }).Solve().Lime.Value.Rate.Value;
            Assert.Equal(asked.OfBasis, assumed.Value.Rate.Value.OfBasis);
        }
    }

    [Fact]
    public void Two_tons_of_what_is_asked_and_each_lime_gives_its_own_bags()
    {
        var plan = Demo;
        var printed = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(6), null, Institution.NorthCarolina);
        var lime = (plan with { Printed = new PrintedAdvice { Crop = "food plot", Lime = printed } }).Solve().Lime;
        Assert.Equal(AnswerState.Open, lime.State);
        var question = Assert.Single(lime.Questions.OfType<OpenQuestion<LimeBasis>>());
        Assert.Equal(WhomToAsk.Laboratory, question.Whom);
        Assert.InRange(question.Plausible.Length, 2, 6);
        Assert.NotEmpty(lime.Cases);
        Assert.All(lime.Cases, c => Assert.Equal(4000, c.Value.Rate.Value.OfBasis.PoundsPerAcre, 1e-9));
    }

    [Fact]
    public void Lime_that_nobody_offers_is_asked_of_the_dealer()
    {
        var lime = (Demo with { LimeOffers = [] }).Solve().Lime.Value;
        Assert.Equal(AnswerState.Open, lime.Order.State);
        Assert.Equal("lime-ask-offer", Assert.Single(lime.Order.Questions).Code);
        Assert.Equal(AnswerState.Open, lime.Outlook.State);
    }

    [Fact]
    public void A_label_without_strength_gives_an_order_for_each_plausible_one()
    {
        var order = (Demo with { LimeOffers = [Offer.InBags(Silent, Mass.FromPounds(40), 5)] }).Solve().Lime.Value.Order;
        Assert.Equal("lime-ask-label", Assert.Single(order.Questions).Code);
        Assert.Equal(6, order.Cases.Length);
        Assert.True(order.Cases[0].Value.Bags > order.Cases[^1].Value.Bags);
    }

    [Fact]
    public void A_day_of_liming_that_is_not_known_gives_an_outlook_for_each_day()
    {
        var outlook = (Demo with { LimeDate = null }).Solve().Lime.Value.Outlook;
        Assert.Equal(AnswerState.Open, outlook.State);
        Assert.Equal("lime-ask-day", Assert.Single(outlook.Questions).Code);
        var worked = outlook.Cases.Select(c => c.Value.Worked.High.Value).ToList();
        Assert.True(worked.Count >= 3);
        Assert.Equal(worked.Order(), worked);
        Assert.True(worked[^1] > worked[0]);
    }

    [Fact]
    public void Above_the_target_sulfur_is_told_by_texture()
    {
        var plan = Demo with { Report = Report(WaterPh.FromValue(7.4), BufferPh.FromValue(6.8, SoilBuffer.Mehlich)), Printed = null, StatedTargetPh = 6.5 };
        var open = (plan with { Plot = plan.Plot with { Texture = null } }).Solve().Lime.Value.Sulfur;
        Assert.Equal(AnswerState.Open, open.State);
        Assert.Equal(6, open.Cases.Length);
        var given = (plan with { Plot = plan.Plot with { Texture = SoilTexture.Loam } }).Solve().Lime.Value.Sulfur;
        Assert.Equal(AnswerState.Given, given.State);
        Assert.Contains(given.Questions, q => q.Code == "soil-ask-free-lime");
        Assert.Equal(AnswerState.NoneNeeded, Demo.Solve().Lime.Value.Sulfur.State);
    }

    [Fact]
    public void A_report_without_readings_leaves_the_need_open_with_the_tests_that_are_accepted()
    {
        var answers = (Demo with { Report = Report(WaterPh.FromValue(5.2)), Printed = null }).Solve();
        Assert.Equal(AnswerState.Open, answers.Need.State);
        Assert.All(answers.Need.Questions.OfType<OpenQuestion<AcceptedTest>>(), q => Assert.NotEmpty(q.Plausible));
        Assert.Equal(2, answers.Need.Questions.Count(q => q.Code == "nutrient-ask-test"));
        Assert.Equal(AnswerState.Open, answers.Fertilizer.State);
    }

    [Fact]
    public void No_fertilizer_on_offer_is_a_question_and_not_nothing_needed()
    {
        var fertilizer = (Demo with { FertilizerOffers = [] }).Solve().Fertilizer;
        Assert.Equal(AnswerState.Open, fertilizer.State);
        Assert.Contains(fertilizer.Questions, q => q is { Code: "fertilizer-ask-offer", Whom: WhomToAsk.Dealer });
    }

    [Fact]
    public void A_kind_without_a_seed_count_leaves_seed_and_spreading_open()
    {
        var plan = Demo;
        var first = plan.Kinds[0];
        var own = first.Kind with { SeedCount = null };
        var lot = new SeedLot { Label = "x", Kind = own, Analysis = first.Offer.Item.Analysis };
        var changed = plan with { Kinds = [new PlannedKind { Share = KindShare.FromShare(own, 0.5), Offer = first.Offer with { Item = lot } }], SeedOffers = [] };
        var answers = changed.Solve();
        Assert.Equal(AnswerState.Open, answers.Seed.State);
        Assert.Equal(AnswerState.Open, answers.Spreading.State);
        var question = Assert.Single(answers.Seed.Questions);
        Assert.Equal("seed-ask-count", question.Code);
        Assert.Equal(own.ShortName, question.Subject);
        Assert.Equal(AnswerState.Given, answers.Lime.State);
        Assert.Contains(FieldSheet.Of(answers).Sections.SelectMany(s => s.Blocks).OfType<SheetSentence>(), s => s.Text == question.Text);
        var counted = lot with { OwnSeedCount = SeedCount.FromSeedsPerPound(60_000) };
        var seed = (changed with { Kinds = [changed.Kinds[0] with { Offer = first.Offer with { Item = counted } }] }).Solve().Seed.Value;
        var part = Assert.Single(seed.Kinds).Part;
        Near.Assert(part.LiveRate.PoundsPerAcre * 60_000 / 43_560, part.LiveSeedsPerSquareFoot, 1e-9);
    }

    [Fact]
    public void Dates_are_open_until_the_region_is_known_and_each_region_is_a_case()
    {
        var dates = Demo.Solve().Seed.Value.Dates;
        Assert.Equal(AnswerState.Open, dates.State);
        Assert.Equal(PlantingRegion.All, dates.Cases.Select(c => c.Value.Region));
    }

    [Fact]
    public void Poison_wet_ground_and_old_tests_are_told_though_the_sheet_has_no_section_for_them()
    {
        var plan = Demo;
        var sorghum = KindCatalog.Standard.Find("sorghum-sudangrass");
        var old = new SeedLot
        {
            Label = "old",
            Kind = sorghum,
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), germination: Fraction.FromPercent(80)),
            TestMonth = TestMonth.FromYearAndMonth(2019, 5),
        };
        var wet = plan with
        {
            Plot = plan.Plot with { Drainage = DrainageClass.VeryPoor },
            Kinds = [new PlannedKind { Share = KindShare.FromShare(sorghum, 0.5), Offer = Offer.InBags(old, Mass.FromPounds(50), 40) }],
            SeedOffers = [],
        };
        Assert.Contains("blend-ground-wet", wet.Solve().Findings.Select(f => f.Code));
        var answers = (wet with { Plot = plan.Plot with { Drainage = DrainageClass.Well } }).Solve();
        string[] codes = [.. answers.Findings.Select(f => f.Code)];
        Assert.Contains("blend-poison", codes);
        Assert.Contains("seed-test-old", codes);
        Assert.Contains(answers.Findings, f => f is { Code: "seed-test-old", Subject: { } subject } && subject.Contains("lot old", StringComparison.Ordinal));
        Assert.Equal(answers.Findings, FieldSheet.Of(answers).Findings);
        Assert.Equal(AnswerState.Given, answers.Seed.Value.RateCheck.State);
        Assert.False(answers.Seed.Value.Kinds[0].Test.Value.IsCurrent);
        Assert.Equal(new DateOnly(2019, 10, 31), answers.Seed.Value.Kinds[0].Test.Value.LastDay);
    }

    [Fact]
    public void What_is_worked_out_late_is_worked_out_once()
    {
        var seed = Demo.Solve().Seed.Value;
        Assert.Same(seed.Fit, seed.Fit);
        Assert.Same(seed.Seasons, seed.Seasons);
        Assert.All(seed.Additions, a => Assert.True(a.Filled > 0));
        Assert.Equal(AnswerState.NoneNeeded, seed.RateCheck.State);
    }

    [Fact]
    public void The_report_is_rated_by_its_own_institution()
    {
        var plan = Demo;
        var readings = plan.Report!.Readings;
        Assert.NotEmpty(readings);
        var soil = plan.Solve().Soil.Value;
        Assert.NotEqual(AnswerState.NoneNeeded, soil.Ratings.State);
        if (soil.Ratings.TryGet(out var rated))
        {
            Assert.Equal(SoilProgram.For(plan.Report!)!.Institution, rated.System.Institution);
        }
        else
        {
            Assert.Contains(soil.Ratings.Questions, q => q.Code == "nutrient-ask-ratings");
        }

        Assert.NotEmpty(soil.Sampling.Value.ShowWork());
    }

    [Fact]
    public void Each_product_alone_stands_beside_the_cheapest_set()
    {
        var plan = Demo;
        var fertilizer = plan.Solve().Fertilizer.Value;
        Assert.Equal(plan.FertilizerOffers.Length, fertilizer.Fits.Length);
        Assert.Equal(fertilizer.Fits.Select(f => f.Miss).Order(), fertilizer.Fits.Select(f => f.Miss));
        Assert.Same(fertilizer.Fits[0].Product, fertilizer.BestAlone.Value.Product);
        Assert.NotEmpty(fertilizer.Alone);
        Assert.Contains(fertilizer.Setbacks.Questions, q => q.Code == "fertilizer-ask-water");
    }

    [Fact]
    public void Urea_on_the_surface_loses_by_the_warmth_of_the_soil()
    {
        var plan = Demo with
        {
            Method = PlantingMethod.BroadcastThenRolled,
            FertilizerOffers = [Offer.InBags(FertilizerProduct.Create("urea", FertilizerAnalysis.FromGrade("46-0-0")), Mass.FromPounds(50), 28)],
            Printed = new PrintedAdvice { Crop = "food plot", Nitrogen = ApplicationRate.FromPoundsPerAcre(40), Phosphate = ApplicationRate.Zero, Potash = ApplicationRate.Zero },
        };
        var fertilizer = plan.Solve().Fertilizer.Value;
        Assert.Equal(AnswerState.Open, fertilizer.UreaLoss.State);
        Assert.True(fertilizer.UreaLoss.Cases.Length >= 3);
        Assert.True(fertilizer.UreaLoss.Cases[^1].Value.High > fertilizer.UreaLoss.Cases[0].Value.High);
        var acid = Assert.Single(fertilizer.Acidity);
        Assert.Equal(1.8 * acid.Nitrogen.PoundsPerAcre, acid.Carbonate.PoundsPerAcre, 1e-6);
    }

    [Fact]
    public void A_pass_without_a_run_asks_for_one_and_one_hopper_is_bounded_only_by_runs_of_every_kind()
    {
        var plan = Demo;
        var none = (plan with { Spreader = plan.Spreader! with { Runs = [] } }).Solve().Spreading.Value;
        Assert.All(none.Passes, p => Assert.Equal("spread-ask-run", Assert.Single(p.Setting.Questions).Code));
        Assert.Equal(AnswerState.Open, none.AllInOneHopper.State);
        var untimed = plan.Kinds.Select(k => new SpreaderRun { Kind = k.Kind, Gate = 3, Weighed = Mass.FromPounds(0.5), Distance = Length.FromFeet(200) });
        var asked = (plan with { Spreader = plan.Spreader! with { Runs = [.. untimed] } }).Solve().Spreading.Value;
        Assert.All(asked.Passes, p => Assert.Equal("spread-ask-time", Assert.Single(p.Setting.Questions).Code));
        var timed = untimed.Select(r => r with { Time = TimeSpan.FromSeconds(50) });
        var all = (plan with { Spreader = plan.Spreader! with { Runs = [.. timed] } }).Solve().Spreading.Value;
        Assert.Equal(all.Passes.Sum(p => p.Kinds.Length), all.AllInOneHopper.Value.Kinds.Length);
    }
}
