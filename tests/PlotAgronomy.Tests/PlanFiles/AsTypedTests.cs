using System.Text.Json.Nodes;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>Dates, amounts and labels as people type them; what may mean two things is asked.</summary>
public class AsTypedTests
{
    private static PlanReadResult Edited(string path, string json) => PlanFile.Read(EditedPlan.With("fall-blend", path, json));

    private static PlotPlan Plan(string path, string json)
    {
        var reading = Edited(path, json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        return reading.Plan!;
    }

    [Theory]
    [InlineData("2026-09-12")]
    [InlineData("Sep 12, 2026")]
    [InlineData("September 12 2026")]
    [InlineData("12 September 2026")]
    [InlineData("9/9/2026", 9)]
    [InlineData("9/27/2026", 27)]
    [InlineData("27.9.2026", 27)]
    public void A_day_is_read_as_it_is_typed(string typed, int day = 12) =>
        Assert.Equal(new DateOnly(2026, 9, day), Plan("plantingDate", $"\"{typed}\"").PlantingDate);

    [Theory]
    [InlineData("9/12/2026", "2026-09-12 or 2026-12-09")]
    [InlineData("6/27", "may be a day without its year, or the month 2027-06")]
    [InlineData("June 2027", "is a month: which day?")]
    [InlineData("2027-06", "is a month: which day?")]
    [InlineData("2027-02-30", "expected a date")]
    [InlineData("tomorrow", "expected a date")]
    [InlineData("2500-01-01", "expected a year")]
    public void What_is_no_one_day_is_asked(string typed, string says)
    {
        var problem = Assert.Single(Edited("plantingDate", $"\"{typed}\"").Problems);
        Assert.Contains(says, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_month_that_counts_from_its_end_the_last_day_is_taken_and_said()
    {
        var reading = Edited("limeDate", "\"March 2026\"");
        Assert.Equal(new DateOnly(2026, 3, 31), reading.Plan!.LimeDate);
        var taken = Assert.Single(reading.Taken);
        Assert.Equal("$.limeDate", taken.Path);
        Assert.Contains("its last day counts, 2026-03-31", taken.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sample_of_a_month_counts_from_its_first_day()
    {
        var reading = Edited("soilReport.sampled", "\"2026-03\"");
        Assert.Equal(new DateOnly(2026, 3, 1), reading.Plan!.Report!.SampledOn);
        Assert.Contains("its first day counts, 2026-03-01", Assert.Single(reading.Taken).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6/26", 1)]
    [InlineData("06/2026", 0)]
    [InlineData("2026-06", 0)]
    [InlineData("June 2026", 0)]
    [InlineData("Jun 26", 1)]
    [InlineData("2026-06-01", 0)]
    public void A_month_of_test_is_read_as_a_tag_prints_it(string typed, int said)
    {
        var reading = Edited("materials.seedLots.0.tested", $"\"{typed}\"");
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        Assert.Equal(TestMonth.FromYearAndMonth(2026, 6), reading.Plan!.SeedOffers[0].Item.TestMonth);
        Assert.Equal(said, reading.Taken.Length);
    }

    [Fact]
    public void A_test_on_an_ambiguous_day_is_asked() =>
        Assert.Contains("2026-09-12 or 2026-12-09", Assert.Single(Edited("materials.seedLots.0.tested", "\"9/12/26\"").Problems).Text, StringComparison.Ordinal);

    /// <summary>Source: exact, 16 oz to the pound, 12 in to the foot.</summary>
    [Theory]
    [InlineData("1 lb 9 oz", 1.5625)]
    [InlineData("1lb 9oz", 1.5625)]
    [InlineData("2 lbs, 4.5 oz", 2.28125)]
    public void Pounds_and_ounces(string typed, double pounds)
    {
        Assert.True(Amounts.TryReadMass(typed, out var mass, out string problem), problem);
        Assert.Equal(pounds, mass.Pounds, 1e-12);
    }

    [Theory]
    [InlineData("14 ft 6 in")]
    [InlineData("14'6\"")]
    [InlineData("14ft 6in")]
    public void Feet_and_inches(string typed)
    {
        Assert.True(Amounts.TryReadLength(typed, out var length, out string problem), problem);
        Assert.Equal(14.5, length.Feet, 1e-12);
    }

    [Theory]
    [InlineData("1 lb 16 oz")]
    [InlineData("1.5 lb 2 oz")]
    [InlineData("1 oz 2 lb")]
    [InlineData("1 lb 9")]
    [InlineData("9")]
    public void What_is_no_pounds_and_ounces_is_refused_with_the_units(string typed)
    {
        Assert.False(Amounts.TryReadMass(typed, out _, out string problem));
        Assert.Contains("units: lb, oz", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_minute_and_a_half()
    {
        Assert.True(Amounts.TryReadDuration("1 min 30 s", out var time, out _));
        Assert.Equal(90, time.TotalSeconds);
    }

    [Fact]
    public void A_bare_number_is_refused_with_the_units_to_choose_from() =>
        Assert.Contains("(lb, oz, g, kg, ton, t)", Assert.Single(Edited("materials.seedLots.0.package", "50").Problems).Text, StringComparison.Ordinal);

    /// <summary>Source: a bushel of rye is 56 lb (KIND-G4020): 2 bu/ac is 112 lb/ac.</summary>
    [Fact]
    public void Bushels_count_by_the_legal_weight_of_the_kind_and_say_so()
    {
        string json = EditedPlan.Of("fall-blend", plan =>
        {
            var kinds = plan["growing"]!["kinds"]!.AsArray();
            kinds.Clear();
            kinds.Add(JsonNode.Parse("""{ "kind": "winter rye", "rate": "2 bu/ac", "rateIs": "pure live seed", "rateFor": "broadcast" }"""));
            plan["growing"]!.AsObject().Remove("totalShare");
            plan["materials"]!["seedLots"]!.AsArray().Add(JsonNode.Parse("""{ "kind": "winter rye", "lot": "R-9", "pureSeed": "98 %", "germination": "90 %", "tested": "2026-06", "package": "56 lb", "price": 20 }"""));
        });
        var reading = PlanFile.Read(json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        var kind = Assert.Single(reading.Plan!.Kinds);
        Assert.Equal(112 / kind.Kind.FullRange(SowingMethod.Broadcast).Full.PoundsPerAcre, kind.Share.ShareOfFullStand, 1e-9);
        var taken = Assert.Single(reading.Taken);
        Assert.Contains("112 lb/ac: a bushel weighs 56 lb (KIND-G4020)", taken.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"<5\"")]
    [InlineData("\"< 5\"")]
    public void Less_than_is_an_upper_limit(string typed)
    {
        var plan = Plan("soilReport.readings.0.value", typed);
        Assert.True(plan.Report!.Readings[0].IsUpperLimit);
        Assert.Equal(5, plan.Report.Readings[0].PrintedValue);
        string written = PlanFile.Write(plan);
        Assert.Contains("\"<5\"", written, StringComparison.Ordinal);
        Assert.True(PlanSchemaTests.IsValid(written));
        Assert.Null(Difference.Between(plan, PlanFile.Read(written).Plan));
    }

    [Theory]
    [InlineData("\">5\"")]
    [InlineData("\"<\"")]
    [InlineData("\"<-5\"")]
    [InlineData("\"5\"")]
    public void Other_texts_are_no_readings(string typed) => Assert.Single(Edited("soilReport.readings.0.value", typed).Problems);

    [Fact]
    public void Lime_may_be_known_by_its_label_alone()
    {
        string lime(string figure) => $$"""{ "name": "pellets", "form": "pelletized", "labelFigures": [{ "index": "ohio-enp", "value": {{figure}} }], "package": "40 lb", "price": 6 }""";
        var plan = Plan("materials.lime.0", lime("\"1,240 lb/ton\""));
        Assert.Null(plan.LimeOffers[0].Item.CcePercent);
        Assert.Equal(1240, plan.LimeOffers[0].Item.StatedFigures[0].Value);
        Assert.Null(Difference.Between(plan, PlanFile.Read(PlanFile.Write(plan)).Plan));
        Assert.Equal(1240, Plan("materials.lime.0", lime("1240")).LimeOffers[0].Item.StatedFigures[0].Value);
        Assert.Contains("is stated in lb/ton, found '62 %'", Assert.Single(Edited("materials.lime.0", lime("\"62 %\"")).Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Lime_without_any_figure_is_asked_about() =>
        Assert.Contains(
            "what does the label of 'pellets' state?",
            Assert.Single(Edited("materials.lime.0", """{ "name": "pellets", "form": "pelletized", "package": "40 lb", "price": 6 }""").Problems).Text,
            StringComparison.Ordinal);

    /// <summary>Source: exact. 2.5 gal of 11.1 lb/gal are 27.75 lb.</summary>
    [Fact]
    public void A_liquid_is_bought_by_the_jug()
    {
        string liquid(string density) => $$"""{ "name": "starter", "analysis": "10-34-0"{{density}}, "package": "2.5 gal", "price": 30 }""";
        var plan = Plan("materials.fertilizers.0", liquid(", \"density\": \"11.1 lb/gal\""));
        Assert.Equal(27.75, plan.FertilizerOffers[0].Package.Weight.Pounds, 1e-9);
        Assert.Null(Difference.Between(plan, PlanFile.Read(PlanFile.Write(plan)).Plan));
        Assert.Contains("needs its 'density'", Assert.Single(Edited("materials.fertilizers.0", liquid("")).Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_seed_lot_sold_by_volume_is_to_be_weighed() =>
        Assert.Contains("weigh one", Assert.Single(Edited("materials.seedLots.0.package", "\"2.5 gal\"").Problems).Text, StringComparison.Ordinal);

    /// <summary>Source: a bushel of oats is 32 lb (KIND-G4020), 1.2445 ft3: 25 lb of oats fill 7.27 gal.</summary>
    [Fact]
    public void A_hopper_is_known_by_what_its_label_says_it_holds()
    {
        string json = EditedPlan.Of("fall-blend", plan =>
        {
            plan["spreader"]!["hopper"] = "25 lb";
            plan["spreader"]!["hopperOf"] = "spring oats";
        });
        var reading = PlanFile.Read(json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        Assert.Equal(7.27, reading.Plan!.Spreader!.HopperVolume!.Value.UsGallons, 0.01);
        Assert.Null(Difference.Between(reading.Plan, PlanFile.Read(PlanFile.Write(reading.Plan)).Plan));
        var open = Plan("spreader.hopper", "\"25 lb\"");
        Assert.Contains(open.Solve().Spreading.Questions, q => q.Code == "spread-ask-hopper");
        Assert.DoesNotContain(Plan("spreader.hopper", "\"3 gal\"").Solve().Spreading.Questions, q => q.Code == "spread-ask-hopper");
    }

    /// <summary>Source: hand algebra. At the lower end 40, at the upper 60 lb/ac; never 50.</summary>
    [Theory]
    [InlineData("40 to 60 lb/ac")]
    [InlineData("40-60 lb/ac")]
    public void A_printed_range_is_worked_out_at_both_ends_and_asked_about(string typed)
    {
        var plan = Plan("soilReport.recommendation", $$"""{ "crop": "clover", "potash": "{{typed}}" }""");
        Assert.Null(Difference.Between(plan, PlanFile.Read(PlanFile.Write(plan)).Plan));
        var answers = plan.Solve();
        Assert.Equal(40, answers.Need.Told.Find(PlantNutrient.Potash)!.AtLeast.PoundsPerAcre, 1e-9);
        Assert.Contains(answers.Questions, q => q.Code == "nutrient-ask-range");
        Assert.Contains(answers.Findings, f => f.Code == "plan-range-low-end");
        double[] ends = [.. answers.Need.Cases.Where(c => c.Question.Code == "nutrient-ask-range").Select(c => c.Value.Find(PlantNutrient.Potash)!.AtLeast.PoundsPerAcre)];
        Assert.Equal([40.0, 60.0], ends.Select(e => Math.Round(e, 9)));
        var bought = answers.Fertilizer.Cases.Where(c => c.Question.Code == "nutrient-ask-range").Select(c => c.Value.Purchase.Value.TotalCost).ToList();
        Assert.Equal(2, bought.Count);
        Assert.True(bought[0] <= bought[1]);
    }

    [Theory]
    [InlineData("60 to 40 lb/ac", "lower end to its upper")]
    [InlineData("40 to 60", "no unit")]
    public void A_range_has_its_ends_in_order_and_a_unit(string typed, string says) =>
        Assert.Contains(says, Assert.Single(Edited("soilReport.recommendation", $$"""{ "crop": "clover", "potash": "{{typed}}" }""").Problems).Text, StringComparison.Ordinal);
}
