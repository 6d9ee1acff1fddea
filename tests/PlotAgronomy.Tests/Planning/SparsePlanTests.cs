using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Nothing is required that is not printed: what a plan lacks is asked, told case by case, or not asked at all.</summary>
public class SparsePlanTests
{
    private static PlotPlan Read(string name) => PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"))).Plan!;

    private static PlotPlan County => Read("county-report");

    private static PlotPlan Demo => Read("fall-blend");

    /// <summary>The blend without anything a laboratory would print.</summary>
    private static PlotPlan NoReport => Demo with { Report = null, Printed = null, LimeMethod = null, NutrientSystem = null };

    private static PlotPlan SeedOnly => NoReport with { LimeOffers = [], FertilizerOffers = [], Currency = Currency.Unnamed };

    private static string Sheet(PlotPlan plan)
    {
        var sheet = FieldSheet.Of(plan.Solve());
        Assert.All(sheet.Figures, f => Assert.Null(Record.Exception(() => f.ShowWork())));
        return string.Join('\n', sheet.Figures.Select(f => $"{f.Label}: {f.Value}").Append(sheet.ToText(200)));
    }

    private static string[] Sections(PlotPlan plan) => [.. FieldSheet.Of(plan.Solve()).Sections.Select(s => s.Id)];

    private static SoilReport Report(double ph, BufferPh? buffer = null, string laboratory = "a laboratory") =>
        new()
        {
            Laboratory = laboratory,
            WaterPh = WaterPh.FromValue(ph),
            BufferPhs = buffer is null ? [] : [buffer],
            SoilClass = SoilClass.Mineral,
        };

    private static PlotPlan With(PrintedLimeRate printed) => County with { Printed = County.Printed! with { Lime = printed } };

    /// <summary>Every part of a plan that may be missing, one at a time and all together: solved and told without a fault.</summary>
    [Fact]
    public void A_missing_part_never_throws()
    {
        Func<PlotPlan, PlotPlan>[] without =
        [
            p => p with { Report = null }, p => p with { Printed = null }, p => p with { LimeMethod = null }, p => p with { NutrientSystem = null },
            p => p with { PlantingDate = null }, p => p with { LimeDate = null }, p => p with { TillageDepth = null }, p => p with { Method = null },
            p => p with { LimeOffers = [] }, p => p with { FertilizerOffers = [] }, p => p with { Currency = Currency.Unnamed },
            p => p with { Kinds = [] }, p => p with { Spreader = null },
            p => p with { Report = p.Report is null ? null : new SoilReport() }, p => p with { HomePh = HomePh.FromValue(5.5) },
        ];
        foreach (var plan in new[] { County, Demo, Read("frost-seeding"), Read("strip-reading") })
        {
            for (int first = 0; first < without.Length; first++)
            {
                Told(without[first](plan));
                Told(without[(first + 3) % without.Length](without[first](plan)));
            }

            Told(without.Aggregate(plan, (p, leaveOut) => leaveOut(p)));
        }

        static void Told(PlotPlan plan)
        {
            var answers = plan.Solve();
            var sheet = FieldSheet.Of(answers);
            Assert.NotEmpty(sheet.Sections);
            Assert.All(sheet.Sections, s => Assert.NotEmpty(s.Heading));
            Assert.All(answers.Questions, q => Assert.NotEmpty(q.Text));
            Assert.NotEmpty(FieldSheet.Of(plan.CompareLime()).Sections);
            Assert.NotEmpty(FieldSheet.Of(plan.CompareSystems()).Sections);
            Assert.All(answers.Lime.Cases, c => Assert.NotEmpty(c.Assumption));
            Assert.All(answers.Need.Cases, c => Assert.NotEmpty(c.Assumption));
            Assert.All(answers.Seed.Cases, c => Assert.NotEmpty(c.Assumption));
        }
    }

    /// <summary>Practice: 10 to 15 cores, 6 in deep where the ground is worked, 4 in where it is not (careful rule for small plots).</summary>
    [Theory]
    [InlineData(PlantingMethod.TilledAndPacked, 6), InlineData(PlantingMethod.FrostSeeded, 4)]
    public void Without_a_report_there_is_a_card_to_sample_by(PlantingMethod method, double inches)
    {
        var answers = (NoReport with { Method = method, TillageDepth = null }).Solve();
        Assert.Equal(AnswerState.Open, answers.Soil.State);
        Assert.Contains("soil-ask-report", answers.Questions.Select(q => q.Code));
        Assert.True(answers.Soil.TryGetPart(out var soil));
        var card = soil!.Card.Value;
        Assert.Equal((10, 15), (card.Advice.FewestCores, card.Advice.MostCores));
        Assert.Equal(inches, card.Advice.Depth.Inches, 1e-9);
        Assert.Equal("clover seeded with small grain", card.CropToName);
        Assert.True(card.NeedsBuffer);
        Assert.Equal(new DateOnly(2026, 3, 12), card.SendBy);
        Assert.Equal(AnswerState.NoneNeeded, Demo.Solve().Soil.Value.Card.State);
    }

    [Fact]
    public void The_crop_to_name_is_the_laboratorys_own_row_for_food_plots_where_it_has_one() =>
        Assert.Equal(
            "deer and turkey food plot",
            Card(NoReport with { Plot = NoReport.Plot with { Place = Place.Find("North Carolina") } }).CropToName
        );

    /// <summary>Practice: no buffer is read from pH 6.5 on; a strip at 7 that may be off by 0.5 does not lie below.</summary>
    [Theory]
    [InlineData(7.0, false), InlineData(6.9, true)]
    public void A_buffer_is_asked_for_unless_even_the_lowest_own_reading_is_too_high_for_one(double ph, bool needed) =>
        Assert.Equal(needed, Card(NoReport with { HomePh = HomePh.FromValue(ph) }).NeedsBuffer);

    private static SamplingCard Card(PlotPlan plan) => plan.Solve().Soil.TryGetPart(out var soil) ? soil!.Card.Value : throw new InvalidOperationException();

    [Fact]
    public void Seed_alone_asks_nothing_of_lime_and_fertilizer_and_prints_no_heading_for_them()
    {
        var answers = SeedOnly.Solve();
        Assert.Equal(AnswerState.NotAsked, answers.Lime.State);
        Assert.Equal(AnswerState.NotAsked, answers.Need.State);
        Assert.Equal(AnswerState.NotAsked, answers.Fertilizer.State);
        Assert.Equal(AnswerState.Given, answers.Seed.State);
        Assert.DoesNotContain("lime", Sections(SeedOnly));
        Assert.DoesNotContain("fertilizer", Sections(SeedOnly));
        Assert.Contains("sampling", Sections(SeedOnly));
        Assert.Contains("Nothing was asked", Assert.Throws<InvalidOperationException>(() => answers.Lime.Value).Message, StringComparison.Ordinal);
    }

    /// <summary>Hand: 2 ton/ac x 0.42 ac = 1,680 lb, which is 42 bags of 40 lb; ton for ton of ground limestone (no strength is printed).</summary>
    [Fact]
    public void A_printed_rate_without_a_depth_is_taken_as_it_stands()
    {
        var printed = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), null, null, LimeBasis.GroundLimestone, null);
        var lime = (With(printed) with { LimeOffers = [County.LimeOffers[0]] }).Solve().Lime.Value;
        Assert.Equal(1680, lime.Order.Value.Product.Pounds, 1e-6);
        Assert.Equal(42, lime.Order.Value.Bags);
        Assert.DoesNotContain("6.67 in", lime.Rate.Value.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("pH", lime.Rate.Value.ToString(), StringComparison.Ordinal);
        Assert.Equal(["lime-ask-target", "lime-ask-depth"], lime.Missing.Select(q => q.Code));
        Assert.Equal(AnswerState.Open, lime.Outlook.State);
        // Worked 5 in of 6 in printed: 1,400 lb.
        var byDepth = lime.Order.Cases.Single(c => c.TryGetAssumed<Length>(out var depth) && Math.Abs(depth.Inches - 6) < 1e-9);
        Assert.Equal(1400, byDepth.Value.Product.Pounds, 1e-6);
    }

    [Fact]
    public void A_printed_rate_without_its_lime_puts_each_plausible_order_side_by_side()
    {
        var answers = County.Solve();
        var lime = answers.Lime;
        Assert.Equal(AnswerState.Open, lime.State);
        Assert.True(lime.TryGetPart(out var part));
        Assert.Equal(AnswerState.Open, part!.Order.State);
        var question = Assert.Single(lime.Questions, q => q.Code.StartsWith("lime-ask", StringComparison.Ordinal));
        Assert.Equal(WhomToAsk.Laboratory, question.Whom);
        Assert.Contains("of which lime, to which pH and for how deep a soil", question.Text, StringComparison.Ordinal);
        Assert.Contains(part.Order.Cases, c => Math.Abs(c.Value.Product.Pounds - 1680) < 1e-6);
        Assert.True(part.OrderRange!.Value.High.Value.Product.Pounds > 1.5 * part.OrderRange.Value.Low.Value.Product.Pounds);
        Assert.All(part.Order.Cases, c => Assert.NotEqual(DataStatus.Memory, c.Value.Request.Rate.Basis.Status));
        string sheet = Sheet(County);
        Assert.Contains("not printed: of which lime, to which pH and for how deep a soil", sheet, StringComparison.Ordinal);
        Assert.Contains("So the order lies between", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain(answers.Findings, f => f.Code == "lime-label-missing");
    }

    /// <summary>The printed figures are followed: 60, 40 and 80 lb/ac, whatever system could be chosen.</summary>
    [Fact]
    public void Printed_nutrients_need_no_system()
    {
        var need = (County with { Report = new SoilReport() }).Solve().Need.Value;
        Assert.Equal([60.0, 40, 80], new[] { PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash }.Select(n => need.Find(n)!.AtLeast.PoundsPerAcre));
    }

    [Fact]
    public void Laboratory_then_place_choose_the_methods_and_nobody_chooses_in_silence()
    {
        var report = Report(5.2, BufferPh.FromValue(6.2, SoilBuffer.Mehlich), "North Carolina state laboratory");
        var bare = County with { Printed = null, Plot = County.Plot with { Place = null } };
        var byLaboratory = (bare with { Report = report }).Solve().LimeMethod;
        Assert.Equal((ChosenBy.Laboratory, "north-carolina-mehlich"), (byLaboratory.By, byLaboratory.Chosen!.Id));
        var unknown = report with { Laboratory = "a laboratory", BufferPhs = [BufferPh.FromValue(6.2, SoilBuffer.Sikora)] };
        var byPlace = (bare with { Report = unknown, Plot = bare.Plot with { Place = Place.Find("Oregon") } }).Solve().LimeMethod;
        Assert.Equal((ChosenBy.Place, "oregon-2025-sikora"), (byPlace.By, byPlace.Chosen!.Id));
        var nobody = (bare with { Report = unknown }).Solve();
        Assert.Null(nobody.LimeMethod.Chosen);
        Assert.True(nobody.LimeMethod.Fitting.Length > 1);
        Assert.Contains("lime-ask-whose", nobody.Lime.Questions.Select(q => q.Code));
        Assert.True(nobody.Lime.Cases.Length > 1);
        var named = (bare with { Report = unknown, LimeMethod = LimeMethod.Oregon }).Solve().LimeMethod;
        Assert.Equal(ChosenBy.Plan, named.By);
    }

    [Fact]
    public void No_method_from_memory_is_chosen_by_itself()
    {
        var buffers = Enum.GetValues<SoilBuffer>();
        foreach (var (place, buffer) in Place.All.Select((place, i) => (place, buffers[i % buffers.Length])))
        {
            var plan = County with
            {
                Printed = null,
                Report = County.Report! with { Laboratory = $"{place} laboratory", BufferPhs = [BufferPh.FromValue(6.2, buffer)] },
                Plot = County.Plot with { Place = place },
            };
            var (lime, system) = (MethodChoices.Lime(plan, Shares(plan)), MethodChoices.Nutrients(plan, Shares(plan)));
            Assert.All(lime.Fitting, m => Assert.NotEqual(DataStatus.Memory, m.Status));
            Assert.All(system.Fitting, m => Assert.NotEqual(DataStatus.Memory, m.Status));
            Assert.True(lime.Chosen is null || lime.Fitting.Contains(lime.Chosen));
            Assert.True(system.Chosen is null || system.Fitting.Contains(system.Chosen));
        }
    }

    private static KindShare[] Shares(PlotPlan plan) => [.. plan.Kinds.Select(k => k.Share)];

    /// <summary>A pH alone: practice's garden table is the only one that reads it, and is said to be rough.</summary>
    [Fact]
    public void A_ph_alone_is_read_by_practice_and_says_so()
    {
        var answers = (County with { Printed = null }).Solve();
        Assert.Equal((ChosenBy.NothingElseReads, "texture-fallback"), (answers.LimeMethod.By, answers.LimeMethod.Chosen!.Id));
        Assert.Contains("no institution's method reads this report", Sheet(County with { Printed = null }), StringComparison.Ordinal);
        Assert.Contains(answers.Findings, f => f.Code == "lime-texture-taken-as");
    }

    [Fact]
    public void Without_any_reading_for_lime_it_is_told_which_would_be_read()
    {
        var plan = County with { Printed = null, Plot = County.Plot with { Texture = null } };
        var lime = plan.Solve().Lime;
        var question = Assert.Single(lime.Questions, q => q.Code == "lime-ask-any-reading");
        Assert.Contains("Mehlich", question.Text, StringComparison.Ordinal);
    }

    /// <summary>Garden table, loam: pH 5.0 asks 10.5, 5.5 asks 8 and 6.0 asks 4 lb/100 ft2, in a straight line between; 435.6 x 100 ft2
    /// to the acre. The kinds ask for pH 5.8, so that none is due at 6.0.</summary>
    [Fact]
    public void A_strip_gives_a_range_of_lime_and_never_an_order()
    {
        var plan = Read("strip-reading");
        Assert.Equal(0.5, plan.HomePh!.Error);
        var answers = plan.Solve();
        Assert.Equal(AnswerState.Open, answers.Lime.State);
        Assert.True(answers.Lime.TryGetPart(out var lime));
        Assert.Equal(0, lime!.ByHomePh!.Low.PoundsPerAcre);
        Assert.Equal(10.5 * 435.6, lime.ByHomePh.High.PoundsPerAcre, 1e-6);
        var closer = (plan with { HomePh = HomePh.FromValue(5.5, 0.2) }).Solve().Lime.TryGetPart(out var near) ? near!.ByHomePh! : null;
        Assert.Equal(6.4 * 435.6, closer!.Low.PoundsPerAcre, 1e-6);
        Assert.Equal(9 * 435.6, closer.High.PoundsPerAcre, 1e-6);
        Assert.Equal(AnswerState.Open, lime.Order.State);
        Assert.Empty(lime.Order.Cases);
        Assert.Contains("soil-ask-report", answers.Lime.Questions.Select(q => q.Code));
        string sheet = Sheet(plan);
        Assert.Contains("to plan by, not to buy by", sheet, StringComparison.Ordinal);
        Assert.Null(FieldSheet.Of(answers).Find("buy.lime"));
    }

    [Theory]
    [InlineData(2.9, null), InlineData(10.1, null), InlineData(6.0, 0.0), InlineData(6.0, 2.1), InlineData(double.NaN, null)]
    public void A_strip_reads_no_other_ph(double ph, double? error) => Assert.Throws<ArgumentOutOfRangeException>(() => HomePh.FromValue(ph, error));

    [Fact]
    public void A_buffer_without_a_name_gives_a_case_for_each_method_whose_buffer_it_may_be()
    {
        var report = Report(5.2) with { UnnamedBufferPh = 6.3 };
        var lime = (County with { Printed = null, Report = report, Plot = County.Plot with { Texture = null } }).Solve().Lime;
        Assert.Equal(AnswerState.Open, lime.State);
        Assert.Contains("lime-ask-buffer", lime.Questions.Select(q => q.Code));
        Assert.True(lime.Cases.Length > 1);
        Assert.True(lime.Cases.Select(c => c.Value.Rate.Value.OfBasis).Distinct().Count() > 1);
    }

    [Fact]
    public void Readings_without_their_extractant_are_told_for_each_plausible_one()
    {
        var report = Demo.Report! with { Readings = [.. Demo.Report!.Readings.Select(r => SoilReading.FromPrinted(r.Analyte, 20, SoilTestUnit.PartsPerMillion, Extractant.NotStated))], Laboratory = "a laboratory" };
        var need = (County with { Printed = null, Report = report }).Solve().Need;
        Assert.Equal(AnswerState.Open, need.State);
        Assert.Contains("soil-ask-extractant", need.Questions.Select(q => q.Code));
    }

    [Fact]
    public void Broadcast_then_rolled_on_bare_worked_ground_is_asked_about()
    {
        var meant = County with { Method = PlantingMethod.BroadcastThenRolled, Plot = County.Plot with { Cover = GroundCover.BareGround } };
        var question = Assert.Single(meant.Solve().Questions.OfType<OpenQuestion<PlantingMethod>>());
        Assert.Contains("nothing stands there, and the ground is worked 5 in deep", question.Text, StringComparison.Ordinal);
        Assert.Empty(County.Solve().Questions.OfType<OpenQuestion<PlantingMethod>>());
        var standing = meant with { TillageDepth = null, Plot = meant.Plot with { Cover = GroundCover.SmallGrain } };
        Assert.Empty(standing.Solve().Questions.OfType<OpenQuestion<PlantingMethod>>());
    }

    [Fact]
    public void Without_a_way_of_planting_the_seed_is_open_with_a_case_for_each()
    {
        var seed = (County with { Method = null }).Solve().Seed;
        Assert.Equal(AnswerState.Open, seed.State);
        Assert.Equal("plan-ask-method", Assert.Single(seed.Questions).Code);
        Assert.True(seed.Cases.Length > 1);
    }

    /// <summary>Practice: what stands there is ended by two tillages or by the label.</summary>
    [Theory]
    [InlineData(GroundCover.Weeds, "End the weeds first"), InlineData(GroundCover.GrassSod, "End the sod first"), InlineData(GroundCover.Brush, "Clear the brush first")]
    public void What_stands_there_is_ended_first(GroundCover cover, string step)
    {
        foreach (var method in Enum.GetValues<PlantingMethod>().Select(m => (PlantingMethod?)m).Append(null))
        {
            var work = (County with { Method = method, PlantingDate = method == PlantingMethod.FrostSeeded ? new(2027, 2, 20) : County.PlantingDate, Plot = County.Plot with { Cover = cover } }).Solve().SeasonWork;
            Assert.StartsWith(step, Assert.Single(work, w => w.Task.Id.StartsWith("end-", StringComparison.Ordinal) || w.Task.Id.StartsWith("clear-", StringComparison.Ordinal)).Task.Title, StringComparison.Ordinal);
        }

        var bare = (County with { Plot = County.Plot with { Cover = GroundCover.BareGround } }).Solve().SeasonWork;
        Assert.DoesNotContain(bare, w => w.Task.Id.StartsWith("end-", StringComparison.Ordinal) || w.Task.Id.StartsWith("weeds-", StringComparison.Ordinal));
    }

    private static PlotPlan Printed => Read("printed-rate");

    /// <summary>Hand: half an acre at 2 ton/ac is 2,000 lb: 50 bags of 40 lb, 40 of 50 lb, ton for ton; 60-40-80 lb/ac on half an acre.</summary>
    [Fact]
    public void A_plot_a_printed_recommendation_and_two_bags_are_a_plan()
    {
        var answers = Printed.Solve();
        Assert.Equal(AnswerState.Open, answers.Lime.State);
        Assert.True(answers.Lime.TryGetPart(out var lime));
        Assert.Contains(lime!.Order.Cases, c => Math.Abs(c.Value.Product.Pounds - 2000) < 1e-6);
        Assert.Equal([60.0, 40, 80], answers.Need.Value.Targets.Select(t => t.AtLeast.PoundsPerAcre));
        Assert.Equal(AnswerState.NoneNeeded, answers.Seed.State);
        Assert.DoesNotContain("soil-ask-report", answers.Questions.Select(q => q.Code));
        Assert.Equal(["ask", "buy", "do", "report", "lime", "fertilizer", "publishers"], Sections(Printed).Except(["watch", "write-down", "ask-later", "findings", "products", "notes", "background", "sources", "plausible"]));
    }

    [Fact]
    public void Lime_alone_asks_nothing_of_seed_and_fertilizer()
    {
        var plan = Printed with { FertilizerOffers = [], Printed = Printed.Printed! with { Nitrogen = null, Phosphate = null, Potash = null } };
        var answers = plan.Solve();
        Assert.Equal(AnswerState.NotAsked, answers.Need.State);
        Assert.DoesNotContain("fertilizer", Sections(plan));
        Assert.DoesNotContain("seed", Sections(plan));
    }

    [Fact]
    public void Prices_without_a_currency_are_plain_numbers()
    {
        var plan = County with { Currency = Currency.Unnamed };
        Assert.Equal("5.75", plan.Currency.Print(5.75m));
        Assert.DoesNotMatch("[0-9] USD", Sheet(plan));
    }
}
