using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Liming;

/// <summary>What a plan makes of a lime need: whose answer stands, what goes on at once, and what waits.</summary>
public class LimeInPlanTests
{
    private static readonly PlotPlan Demo = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    private static SoilReport Report(double ph, SoilBuffer buffer, double reading, double? cec = null) =>
        Demo.Report! with
        {
            WaterPh = WaterPh.FromValue(ph),
            BufferPhs = [BufferPh.FromValue(reading, buffer)],
            ExchangeableAcidity = null,
            PrintedExchangeCapacity = cec is { } known ? CationCharge.FromMilliequivalentsPer100Grams(known) : null,
            SoilClass = SoilClass.Mineral,
        };

    private static PlotPlan Plan(double ph, SoilBuffer buffer, double reading, string method, double? cec = null, params LimingMaterial[] limes) =>
        Demo with
        {
            Report = Report(ph, buffer, reading, cec),
            Printed = null,
            EarlierLime = null,
            LimeMethod = LimeMethod.Find(method),
            StatedTargetPh = 6.0,
            LimeDate = Demo.PlantingDate!.Value.AddMonths(-6),
            LimeOffers = [.. (limes.Length > 0 ? limes : [Ground]).Select(m => Offer.InBags(m, Mass.FromPounds(50), 5))],
        };

    private static LimingMaterial Ground { get; } =
        LimingMaterial.FromAnalysis("ground lime", LimingForm.GroundLimestone, 90, SieveAnalysis.FromPercent((8, 95), (20, 70), (60, 50), (100, 40)));

    private static LimeAnswer Lime(PlotPlan plan) => plan.Solve().Lime.Told;

    private static string Words(PlotAnswers answers) => string.Join(' ', FieldSheet.Of(answers).ToText().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static bool Has(PlotPlan plan, string code) => plan.Solve().Findings.Any(f => f.Code == code);

    /// <summary>By hand (LIME-S7): 4 x (6.6 - 6.2) x 1.2 / 1.8 = 1.07, printed 1.1; 5 of 6 2/3 in; 2080 lb to the ton.</summary>
    [Fact]
    public void The_states_own_answer_stands_on_the_sand_it_was_made_for()
    {
        var pellets = LimingMaterial.FromLabel("pellets", LimingForm.Pelletized, LimeFigure.FromPoundsEqualToOneTon(2080));
        var lime = Lime(Plan(4.8, SoilBuffer.Mehlich, 6.2, "north-carolina-mehlich", 2.1, pellets) with { TillageDepth = Length.FromInches(5) });
        Assert.Equal(1.1 * 0.75 * 2080, lime.Order.Value.ProductRate.PoundsPerAcre, 1e-6);
        Assert.Null(lime.WeaklyBuffered);
        Assert.Equal(Fraction.One, lime.Outlook.Value.Request.ShareDelivered);
        // The need that the rate is made of divides the forecast: all of it at work brings the target.
        Assert.Equal(1.1, lime.Outlook.Value.Request.Rate.OfBasis.ShortTonsPerAcre, 1e-9);
    }

    /// <summary>By hand: 49.3 - 0.71 x 62 = 5.28 ton for 8 in, 5.3 printed; 1 ton/ac at first over 6 in (common practice).</summary>
    [Fact]
    public void The_rule_for_weakly_buffered_soil_only_caps_the_answer_and_says_so()
    {
        var plan = Plan(5.0, SoilBuffer.Smp, 6.2, "tri-state-1995-smp", 4) with { TillageDepth = Length.FromInches(6) };
        var lime = Lime(plan);
        Assert.Equal(1, lime.Order.Value.BasisRate.OfBasis.ShortTonsPerAcre, 1e-9);
        Assert.Equal(1 / (5.3 * 6 / 8), lime.Outlook.Value.Request.ShareDelivered.Value, 1e-9);
        Assert.True(Has(plan, "lime-weakly-buffered-capped"));
        Assert.Contains("CEC 4 meq/100 g", plan.Solve().Findings.First(f => f.Code == "lime-weakly-buffered").Text, StringComparison.Ordinal);
        var byVolume = plan with
        {
            Report = plan.Report! with
            {
                PrintedExchangeCapacity = CationCharge.Of(3.1, CationChargeBasis.Per100CubicCentimeters),
                WeightPerVolume = Density.FromGramsPerCubicCentimeter(1.48),
            },
        };
        Assert.Contains(
            "3.1 meq/100 cm3 as printed (2.1 meq/100 g by weight)",
            byVolume.Solve().Findings.First(f => f.Code == "lime-weakly-buffered").Text,
            StringComparison.Ordinal
        );
        Assert.False(Has(plan with { Report = Report(5.0, SoilBuffer.Smp, 6.78, 4) }, "lime-weakly-buffered-capped"));
    }

    /// <summary>Published (LIME-KS2): half the full rate reaches about 6.0; no rate is printed for 6.2.</summary>
    [Fact]
    public void A_stated_target_is_met_or_refused_never_replaced()
    {
        var plan = Plan(5.5, SoilBuffer.Smp, 6.4, "kansas-mf2586", 15);
        var need = Lime(plan).Computed!;
        Assert.Equal(6.0, need.TargetPh);
        Assert.Equal(0.5 * Lime(plan with { StatedTargetPh = 6.8 }).Computed!.Rate!.OfBasis.PoundsPerAcre, need.Rate!.OfBasis.PoundsPerAcre, 1e-6);
        var refused = plan with { StatedTargetPh = 6.2 };
        Assert.Equal(AnswerState.Open, Lime(refused).Rate.State);
        Assert.Equal(6.2, Lime(refused).TargetPh);
        Assert.Null(Lime(refused).Offers);
        var finding = refused.Solve().Findings.Single(f => f.Code == "lime-target-not-offered");
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains("5.5, 6, 6.8", finding.Text, StringComparison.Ordinal);
    }

    /// <summary>Practice: a method that neutralizes everything is no answer for kinds that ask for a pH unit less.</summary>
    [Fact]
    public void A_method_with_one_high_target_answers_no_lower_one()
    {
        var plan = Plan(5.8, SoilBuffer.Smp, 6.4, "missouri-woodruff", 15) with
        {
            StatedTargetPh = null,
            Report = Report(5.8, SoilBuffer.Smp, 6.4, 15) with { ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(3) },
        };
        Assert.Equal(AnswerState.Open, Lime(plan).Rate.State);
        Assert.Equal(AnswerState.Given, Lime(plan with { StatedTargetPh = 7.0 }).Rate.State);
    }

    /// <summary>Published: Oregon and Missouri 2 ton, New York 1 ton, tri-state 4 in, Iowa 3 in; all others common practice.</summary>
    [Fact]
    public void Lime_on_the_surface_has_a_limit_and_a_depth_with_every_institution()
    {
        foreach (var institution in LimeMethod.All.Concat(LimeMethod.Unchecked).Select(m => m.Institution).Distinct())
        {
            var order = LimeOrder.For(new LimeOrderRequest
            {
                Rate = LimeSamples.Rate(8, LimeBasis.Find("pure-carbonate"), 6, institution: institution.Name),
                Material = LimingMaterial.PureCarbonate,
                Area = Area.FromAcres(1),
                Placement = LimePlacement.Surface,
            });
            Assert.True(order.Dressings.Length > 1, institution.Name);
            Assert.All(order.Dressings, d => Assert.InRange(d.Rate.ShortTonsPerAcre, 0, 2.5));
            bool prints = institution.Name is "Oregon" or "Missouri" or "New York" or "Oklahoma" || institution.Name.StartsWith("Pennsylvania turf", StringComparison.Ordinal);
            Assert.True(prints || order.BasisRate.Depth.Inches < 4.01, institution.Name);
        }
    }

    [Fact]
    public void A_drill_on_ground_that_is_worked_has_its_lime_worked_in()
    {
        var plan = Plan(5.2, SoilBuffer.Smp, 6.2, "tri-state-1995-smp", 15) with { Method = PlantingMethod.Drilled, TillageDepth = Length.FromInches(6) };
        Assert.Equal(LimePlacement.WorkedIn, Lime(plan).Order.Value.Request.Placement);
        Assert.Equal(6, Lime(plan).Order.Value.BasisRate.Depth.Inches, 1e-9);
        Assert.Equal(LimePlacement.Surface, Lime(plan with { TillageDepth = null }).Order.Value.Request.Placement);
        Assert.False(Has(plan, "plan-tillage-unused"));
        Assert.True(Has(plan with { Method = PlantingMethod.BroadcastThenRolled }, "plan-tillage-unused"));
    }

    /// <summary>Published (LIME-S15): above 4 ton one half plowed down, one worked in; nothing is worked into a standing crop.</summary>
    [Fact]
    public void No_second_dressing_is_worked_into_a_standing_perennial()
    {
        var all = Lime(Plan(4.9, SoilBuffer.Smp, 5.6, "tri-state-1995-smp", 20) with { TillageDepth = Length.FromInches(8) }).Order.Value;
        Assert.True(all.Dressings.Length > 1);
        Assert.All(all.Dressings, d => Assert.Equal(0, d.MonthsAfterFirst));
        var own = LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeSamples.Rate(7, LimeBasis.Find("pure-carbonate")),
            Material = LimingMaterial.PureCarbonate,
            Area = Area.FromAcres(1),
            MostAtOnce = ApplicationRate.FromShortTonsPerAcre(3.5),
            FirstDressingOn = new DateOnly(2027, 5, 1),
            SowingOn = new DateOnly(2027, 8, 1),
            StandsForYears = true,
        });
        Assert.Equal([LimePlacement.WorkedIn, LimePlacement.Surface, LimePlacement.Surface], own.Dressings.Select(d => d.Placement));
        Assert.Equal([7000, 3500, 3500], own.Dressings.Select(d => Math.Round(d.Mass.Pounds, 6)));
        Assert.True(own.Has("lime-later-on-surface"));
    }

    /// <summary>Practice: no seed into caustic lime for two weeks. By its strength: 90 / 130 of the limestone.</summary>
    [Fact]
    public void Caustic_lime_is_counted_by_its_strength_and_never_ordered_for_sowing_day()
    {
        var hydrated = LimingMaterial.FromAnalysis("hydrated", LimingForm.Hydrated, 130);
        var plan = Plan(5.2, SoilBuffer.Smp, 6.4, "vermont-aluminum", 15, hydrated) with { TillageDepth = Length.FromInches(6) };
        plan = plan with { StatedTargetPh = 6.5, LimeMethod = LimeMethod.Find("texture-fallback"), Plot = plan.Plot with { Texture = SoilTexture.Loam }, Report = plan.Report! with { Texture = SoilTexture.Loam } };
        foreach (DateOnly? day in new DateOnly?[] { plan.PlantingDate, plan.PlantingDate!.Value.AddDays(-13), plan.PlantingDate!.Value.AddDays(10), null })
        {
            var near = plan with { LimeDate = day };
            Assert.NotEqual(AnswerState.Given, Lime(near).Order.State);
            Assert.Contains(near.Solve().Findings, f => f.Code == "lime-caustic-near-seed" && f.Severity == FindingSeverity.Warning);
            Assert.Equal("ground lime", Lime(near with { LimeOffers = [.. near.LimeOffers, Offer.InBulk(Ground, 90)] }).Offer!.Item.Name);
        }

        var early = plan with { LimeDate = plan.PlantingDate!.Value.AddDays(-14) };
        var stone = Lime(early with { LimeOffers = [Offer.InBulk(Ground, 90)] }).Order.Value.ProductRate;
        Assert.Equal(stone.PoundsPerAcre * 90 / 130, Lime(early).Order.Value.ProductRate.PoundsPerAcre, 1e-6);
    }

    /// <summary>Published (LIME-S8 and the kinds' own limits): without the lime at work the sensitive kinds wait, limed or not.</summary>
    [Fact]
    public void What_todays_pH_holds_back_does_not_rest_on_lime_or_its_day()
    {
        var plan = Plan(4.6, SoilBuffer.Smp, 6.2, "tri-state-1995-smp", 15);
        string[] held = [.. Lime(plan).HoldBack.Select(k => k.Id)];
        Assert.NotEmpty(held);
        foreach (var other in new[] { plan with { LimeOffers = [] }, plan with { LimeDate = null }, plan with { LimeDate = plan.PlantingDate!.Value.AddMonths(1) } })
        {
            var answers = other.Solve();
            Assert.Equal(held, answers.Lime.Told.HoldBack.Select(k => k.Id));
            Assert.Equal(held.Length, answers.Findings.Count(f => f.Code == "lime-kind-hold-back"));
            Assert.Equal(held.Order(), answers.Verdict.Value.Held.Where(v => v.Decision == KindDecision.AfterTest).Select(v => v.Planned.Kind.Id).Order());
            Assert.Contains("hold it back until a new test", Words(answers), StringComparison.Ordinal);
        }

        var sown = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;
        Assert.Contains("serves the next planting", Words((sown with { LimeDate = sown.PlantingDate!.Value.AddMonths(1) }).Solve()), StringComparison.Ordinal);
    }

    /// <summary>Practice, as North Carolina's targets lie 1.0 lower on organic soil (LIME-S7): it holds less aluminum.</summary>
    [Fact]
    public void Organic_soil_has_lower_limits_and_misses_no_buffer()
    {
        var rape = KindCatalog.Standard.Find("rape-dwarf-essex");
        double limit = rape.Ph!.MinimumPh;
        var soil = PlotSoil.For(LimeSamples.Report(limit - 0.9, soilClass: SoilClass.Organic));
        Assert.False(rape.IsTooSourOn(soil));
        Assert.True(rape.IsTooSourOn(soil with { SoilClass = SoilClass.Mineral }));
        Assert.True(rape.IsTooSourOn(soil with { SoilClass = SoilClass.MineralOrganic }));
        Assert.DoesNotContain("soil-buffer-missing", LimeSamples.Report(4.8, soilClass: SoilClass.Organic).Check(new DateOnly(2026, 5, 1)).Select(f => f.Code));
        Assert.Contains("soil-buffer-missing", LimeSamples.Report(4.8, soilClass: SoilClass.Mineral).Check(new DateOnly(2026, 5, 1)).Select(f => f.Code));
    }

    /// <summary>Definition (LIME-AE1): the rate is in ag lime, so ag lime meets it pound for pound.</summary>
    [Fact]
    public void Ag_lime_meets_a_rate_counted_in_ag_lime()
    {
        var lime = Lime(Plan(5.5, SoilBuffer.AdamsEvans, 7.7, "adams-evans", 9) with { TillageDepth = Length.FromInches(20.0 / 3) });
        Assert.Equal(lime.Rate.Value.OfBasis.PoundsPerAcre, lime.Order.Value.ProductRate.PoundsPerAcre, 1e-9);
        Assert.Contains("lime-counted-as-ag-lime", lime.Order.Value.Findings.Select(f => f.Code));
    }

    [Fact]
    public void Every_kind_of_a_tie_is_named_and_a_smother_crop_sets_no_pH()
    {
        CropKind Kind(string id) => KindCatalog.Standard.Find(id);
        var tie = LimeTarget.ForBlend([KindShare.FromShare(Kind("oats-spring"), 0.5), KindShare.FromShare(Kind("ladino-clover"), 0.5)], Institution.Find("tri-state"));
        Assert.Equal(["oats-spring", "ladino-clover"], tie.SetByAll.Select(k => k.Id));
        var smother = LimeTarget.For(Kind("buckwheat"), Institution.Find("pennsylvania"));
        Assert.Equal(Kind("buckwheat").Ph!.MinimumPh, smother.Ph);
        Assert.True(smother.Has("lime-target-smother"));
        var both = LimeTarget.ForBlend([KindShare.FromShare(Kind("buckwheat"), 0.9), KindShare.FromShare(Kind("crimson-clover"), 0.2)], Institution.Find("oklahoma"));
        Assert.Equal(["crimson-clover"], both.SetByAll.Select(k => k.Id));
    }

    /// <summary>By hand (LIME-S7): 0.32 ton is printed as 0.3; 1,500 lb to the ton are 450 lb. A need of 0.22 is printed as none.</summary>
    [Theory]
    [InlineData(0.32, 1500, 450), InlineData(0.22, 2800, 0)]
    public void The_recommendation_is_rounded_never_the_product(double tons, double poundsToTheTon, double pounds)
    {
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeSamples.Rate(tons, LimeBasis.Find("north-carolina-standard"), 20.0 / 3, 6.0, "North Carolina"),
            Material = LimingMaterial.FromLabel("lime", LimingForm.GroundLimestone, LimeFigure.FromPoundsEqualToOneTon(poundsToTheTon)),
            Area = Area.FromAcres(1),
            Rounding = LimeSamples.RoundingOf("North Carolina"),
        });
        Assert.Equal(pounds, order.Product.Pounds, 1e-6);
    }

    /// <summary>Published (LIME-S13): 11 to 20 lb/100 ft2 recommended go on in two dressings, from 21 lb on in three, whatever the
    /// lime bought weighs.</summary>
    [Theory]
    [InlineData(10, 88, 1), InlineData(11, 100, 2), InlineData(18, 88, 2), InlineData(20.45, 100, 2), InlineData(20, 70, 2), InlineData(21, 100, 3)]
    public void A_garden_is_dressed_by_the_recommendation(double poundsAHundred, double cce, int dressings)
    {
        var rate = LimeRate.FromBasis(
            ApplicationRate.FromPoundsPerThousandSquareFeet(10 * poundsAHundred), 6.5, Length.FromInches(7), LimeBasis.Find("cce-100-fine"), Institution.Find("pennsylvania-garden"));
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = rate,
            Material = LimingMaterial.FromAnalysis("garden lime", LimingForm.Pelletized, cce),
            Area = Area.FromSquareFeet(100),
        });
        Assert.Equal(dressings, order.Dressings.Length);
        Assert.Equal(poundsAHundred * 100 / cce, order.Dressings.Sum(d => d.Mass.Pounds), 1e-9);
    }

    /// <summary>By hand from the rule that makes all 38 rows of the table (LIME-S12): 9,000 lb / 43.56 = 206.6, printed 210.</summary>
    [Fact]
    public void Turf_between_the_printed_rows_follows_the_rule_of_the_table()
    {
        LimeNeed Need(double acidity, double target) =>
            LimeMethod.Find("pennsylvania-turf").NeedFor(
                LimeSamples.Report(5.0) with { ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(acidity) }, target);
        Assert.Equal(210, Need(9.4, 7.0).Rate!.OfBasis.PoundsPerThousandSquareFeet, 1e-6);
        Assert.Equal(50, Need(2.2, 7.0).Rate!.OfBasis.PoundsPerThousandSquareFeet, 1e-6);
        Assert.False(Need(9.4, 7.0).Has("lime-interpolated"));
        Assert.True(Need(9.4, 6.5).Has("lime-interpolated"));
    }

    [Fact]
    public void A_rate_in_pounds_of_an_index_is_printed_in_pounds_and_a_basis_from_memory_says_so()
    {
        var enm = LimeSamples.Rate(0.6, LimeBasis.Find("missouri-enm"));
        Assert.StartsWith("1,200 lb/ac of Missouri effective neutralizing material", enm.ToString(), StringComparison.Ordinal);
        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeSamples.Rate(1, LimeBasis.Find("wisconsin-60-69")),
            Material = Ground,
            Area = Area.FromAcres(1),
        });
        Assert.Contains(order.Findings, f => f.Code == "data-from-memory" && f.Text.Contains("Wisconsin 60-69", StringComparison.Ordinal));
    }

    /// <summary>Stoichiometry: burnt dolomite holds at most 71.5 % calcium or 60.3 % magnesium (IUPAC masses).</summary>
    [Fact]
    public void What_no_lime_can_hold_and_no_one_can_spread_is_refused()
    {
        Assert.Throws<ArgumentException>(() => LimingCompound.CcePercentFromElements(Fraction.FromPercent(60), Fraction.FromPercent(60)));
        Assert.Equal(2.497 * 71, LimingCompound.CcePercentFromElements(Fraction.FromPercent(71), Fraction.Zero), 0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() => LimeOrder.For(new LimeOrderRequest
        {
            Rate = LimeSamples.Rate(2),
            Material = LimingMaterial.PureCarbonate,
            Area = Area.FromAcres(1),
            MostAtOnce = ApplicationRate.FromPoundsPerAcre(1),
        }));
    }

    [Fact]
    public void A_method_for_mineral_soil_says_that_it_took_the_soil_for_one()
    {
        var method = LimeMethod.Find("tri-state-1995-smp");
        Assert.True(method.NeedFor(LimeSamples.Report(5.5, SoilBuffer.Smp, 6.4), 6.5).Has("lime-soil-class-assumed"));
        Assert.False(method.NeedFor(LimeSamples.Report(5.5, SoilBuffer.Smp, 6.4, soilClass: SoilClass.Mineral), 6.5).Has("lime-soil-class-assumed"));
        Assert.False(LimeMethod.NorthCarolina.NeedFor(LimeSamples.Report(5.5, SoilBuffer.Mehlich, 6.4), 6.0).Has("lime-soil-class-assumed"));
    }

    /// <summary>Published (LIME-MS1): the state's wildlife page asks for 6.7 to 7.0, half a unit above its neighbours.</summary>
    [Fact]
    public void Mississippis_wildlife_page_keeps_its_own_pH()
    {
        var target = LimeTarget.For(KindCatalog.Standard.Find("crimson-clover"), Institution.Find("mississippi-wildlife"));
        Assert.Equal(6.7, target.Ph);
        Assert.Contains("6.7 to 7", target.Findings.Single(f => f.Code == "lime-target-from-range").Text, StringComparison.Ordinal);
    }
}
