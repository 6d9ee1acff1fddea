using System.Globalization;
using PlotAgronomy.DrawnPlans;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>A plan that is written reads back as the same plan, to the last bit; what a file cannot say is refused.</summary>
public class PlanFileWriteTests
{
    private const int Drawn = 100;
    private const int Attempts = 60;

    private static PlotPlan Demo(string name = "fall-blend") => Read(File.ReadAllText(Repository.PathOf($"samples/data/{name}.json")));

    private static PlotPlan Read(string json)
    {
        var reading = PlanFile.Read(json);
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        return reading.Plan!;
    }

    private static PlotPlan DrawnPlan(int number) =>
        Enumerable.Range(0, Attempts).Select(a => PlanFile.Read(PlanDraw.Of(number, a).ToJsonString()).Plan).First(p => p is not null)!;

    private static PlotPlan ReadsBack(PlotPlan plan, string what)
    {
        string written = PlanFile.Write(plan);
        var again = Read(written);
        Assert.True(Difference.Between(plan, again) is null, $"{what}: {Difference.Between(plan, again)}");
        Assert.Equal(written, PlanFile.Write(again));
        return again;
    }

    [Theory]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    [InlineData("clover-lots")]
    [InlineData("store-blend")]
    public void A_demo_plan_reads_back_and_has_the_same_sheet(string name)
    {
        var plan = Demo(name);
        var again = ReadsBack(plan, name);
        Assert.Equal(Text(plan), Text(again));
        Assert.True(PlanSchemaTests.IsValid(PlanFile.Write(plan)));
    }

    [Fact]
    public void Drawn_plans_read_back_to_the_last_bit()
    {
        foreach (int number in Enumerable.Range(1, Drawn))
        {
            ReadsBack(DrawnPlan(number), number.ToString(CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void What_is_written_of_drawn_plans_satisfies_the_schema() =>
        Assert.All(Enumerable.Range(1, 40), n => Assert.True(PlanSchemaTests.IsValid(PlanFile.Write(DrawnPlan(n)))));

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Writing_does_not_follow_the_culture(string culture)
    {
        string plain = PlanFile.Write(DrawnPlan(7));
        using var scope = new CultureScope(culture);
        Assert.Equal(plain, PlanFile.Write(DrawnPlan(7)));
    }

    [Fact]
    public void What_was_left_out_stays_out_and_amounts_stand_in_the_unit_of_the_page()
    {
        string written = PlanFile.Write(Demo());
        string[] leftOut = ["$schema", "dormantSeed", "totalShare", "storeBlends", "recommendation", "facts", "grewBefore", "legumeCredit"];
        Assert.All(leftOut, f => Assert.DoesNotContain($"\"{f}\"", written, StringComparison.Ordinal));
        Assert.Contains("\"tillageDepth\": \"6 in\"", written, StringComparison.Ordinal);
        Assert.Contains("\"weightPerVolume\": \"1.12 g/cm3\"", written, StringComparison.Ordinal);
        Assert.Contains("{ \"shape\": \"rectangle\", \"length\": \"182 ft\", \"width\": \"140 ft\" }", written, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_that_the_shelf_would_not_choose_is_named()
    {
        var plan = Demo("clover-lots");
        var kind = plan.Kinds[0];
        Assert.DoesNotContain("\"lot\"", PlanFile.Write(plan).Split("\"materials\"")[0], StringComparison.Ordinal);
        foreach (var offer in plan.SeedOffers.Where(o => o != kind.Offer))
        {
            var dearer = plan with { Kinds = [kind with { Choice = null, Offer = offer }] };
            Assert.Equal(offer.Item.Label, ReadsBack(dearer, offer.Item.Label).Kinds[0].Offer.Item.Label);
        }
    }

    [Theory]
    [InlineData("no such lot")]
    [InlineData("A-1")]
    public void A_lot_that_is_not_on_offer_is_a_mistake(string mark)
    {
        string json = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json")).Replace("{ \"kind\": \"chicory\", \"shareOf", $"{{ \"kind\": \"chicory\", \"lot\": \"{mark}\", \"shareOf", StringComparison.Ordinal);
        var problem = Assert.Single(PlanFile.Read(json).Problems);
        Assert.Equal("$.growing.kinds[5].lot", problem.Path);
        Assert.Contains($"(CH-3), found '{mark}'", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_that_is_sown_is_on_offer_even_where_the_plan_does_not_list_it()
    {
        var plan = Demo() with { SeedOffers = [] };
        var again = Read(PlanFile.Write(plan));
        Assert.Null(Difference.Between(plan.Kinds.Select(k => k.Offer).ToList(), again.SeedOffers.ToList()));
        Assert.Equal(plan.Solve().TotalCost, again.Solve().TotalCost);
    }

    [Fact]
    public void Shares_that_sum_to_another_total_are_written_with_it()
    {
        var plan = Demo();
        var half = plan with { Kinds = [.. plan.Kinds.Select(k => k with { Share = KindShare.FromShare(k.Kind, k.Share.ShareOfFullStand / 2) })] };
        ReadsBack(half, "half");
        Assert.Contains("\"totalShare\": 0.5", PlanFile.Write(half), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(2.3)]
    [InlineData(17)]
    public void Shares_that_a_file_does_not_allow_are_written_as_rates(double share)
    {
        var plan = Demo("clover-lots");
        var thick = plan with { Kinds = [plan.Kinds[0] with { Share = KindShare.FromShare(plan.Kinds[0].Kind, share) }] };
        var again = Read(PlanFile.Write(thick));
        Assert.Equal(share, again.Kinds[0].Share.ShareOfFullStand, share * 1e-15);
        Assert.Contains("\"pure live seed\"", PlanFile.Write(thick), StringComparison.Ordinal);
    }

    [Fact]
    public void Treated_and_inoculated_seed_stays_so()
    {
        var plan = Demo();
        var offers = plan.SeedOffers.Select(o => o with { Item = o.Item with { IsTreated = true, IsPreinoculated = o.Item.Kind.IsLegume } }).ToList();
        var treated = plan with { SeedOffers = [.. offers], Kinds = [.. plan.Kinds.Select(k => k with { Choice = null, Offer = offers.Single(o => o.Item.Kind == k.Kind) })] };
        var again = Read(PlanFile.Write(treated));
        Assert.Null(Difference.Between(treated.SeedOffers, again.SeedOffers));
        Assert.Equal(treated.Solve().Findings.Select(f => f.Text), again.Solve().Findings.Select(f => f.Text));
        Assert.Contains(again.Solve().Findings, f => f.Code == SeedCodes.Treated);
    }

    [Theory]
    [InlineData("sulfur")]
    [InlineData("text")]
    public void A_secondary_nutrient_reads_back_wherever_it_was_written(string where)
    {
        string analysis = where == "text" ? "\"analysis\": \"10-20-20-7S-0.07Zn\"" : "\"analysis\": \"10-20-20-0.07Zn\", \"sulfur\": \"7 %\"";
        string json = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json")).Replace("\"analysis\": \"10-20-20\"", analysis, StringComparison.Ordinal);
        ReadsBack(Read(json), where);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Water_near_the_plot_reads_back(bool isNear)
    {
        var plan = Demo();
        Assert.Equal(isNear, ReadsBack(plan with { Plot = plan.Plot with { IsNearWater = isNear } }, "water").Plot.IsNearWater);
    }

    /// <summary>One place for each thing that the records hold and a file has no field or word for.</summary>
    private static readonly Dictionary<string, (Func<PlotPlan, PlotPlan> Change, string Says)> Unsayable = new()
    {
        ["slope"] = (p => p with { Plot = p.Plot with { Measured = p.Plot.Measured.OnSlope(Slope.FromPercent(5)) } }, "$.plot: there is no field for an area corrected"),
        ["error"] = (p => p with { Plot = p.Plot with { Measured = p.Plot.Measured.WithRelativeError(0.1) } }, "an error of the area"),
        ["outline in feet"] = (p => p with { Plot = p.Plot with { Measured = PlotArea.FromOutline(PlotOutline.Rectangle(Length.FromFeet(100), Length.FromFeet(90))) } }, "an outline in feet"),
        ["a pond of an ellipse taken off"] = (p => p with { Plot = p.Plot with { Measured = PlotArea.FromPieces([PlotArea.FromRectangle(Length.FromFeet(200), Length.FromFeet(190))], PlotArea.FromEllipse(Length.FromFeet(30), Length.FromFeet(20))) } }, "a piece of another form"),
        ["ellipse"] = (p => p with { Plot = p.Plot with { Measured = PlotArea.FromEllipse(Length.FromFeet(100), Length.FromFeet(90)) } }, "sides of another form"),
        ["target"] = (p => p with { StatedTargetPh = 8 }, "$.methods.targetPh: expected a number from 5 to 7.5, found 8"),
        ["own kind"] = (p => p with { Plot = p.Plot with { GrewBefore = p.Kinds[0].Kind with { Id = "mine", CommonName = "Mine" } } }, "$.plot.grewBefore: no text reads back as 'Mine'"),
        ["changed kind"] = (p => p with { Plot = p.Plot with { GrewBefore = p.Kinds[0].Kind with { TaxonomyNote = "changed" } } }, "$.plot.grewBefore: no text reads back as"),
        ["texture"] = (p => p with { Report = p.Report! with { Texture = SoilTexture.Clay } }, "$.soilReport: there is no field for a texture on the report"),
        ["bulk"] = (p => p with { LimeOffers = [Offer.InBulk(p.LimeOffers[0].Item, 40)] }, "$.materials.lime[0]: there is no field for goods in bulk"),
        ["pure"] = (p => p with { LimeOffers = [Offer.InBags(LimingMaterial.PureCarbonate, Mass.FromPounds(50), 5)] }, "pure carbonate"),
        ["earlier lime"] = (p => p with { EarlierLime = EarlierLime.FromRate(ApplicationRate.FromPoundsPerAcre(1000), 1.234) }, "$.soilReport.earlierLime: there is no field for earlier lime whose age"),
        ["dear"] = (p => p with { LimeOffers = [Offer.InBags(p.LimeOffers[0].Item, Mass.FromPounds(50), 2_000_000)] }, "$.materials.lime[0].price: expected a number from 0 to 1000000"),
    };

    public static TheoryData<string> UnsayableThings => [.. Unsayable.Keys];

    [Theory]
    [MemberData(nameof(UnsayableThings))]
    public void What_a_file_cannot_say_is_refused_with_its_path(string thing)
    {
        var refused = Assert.Throws<ArgumentException>(() => PlanFile.Write(Unsayable[thing].Change(Demo())));
        Assert.Equal("plan", refused.ParamName);
        Assert.Contains(Unsayable[thing].Says, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_cannot_be_said_is_told_at_once()
    {
        var plan = Unsayable["slope"].Change(Unsayable["target"].Change(Unsayable["bulk"].Change(Demo())));
        string message = Assert.Throws<ArgumentException>(() => PlanFile.Write(plan)).Message;
        Assert.All(new[] { "slope", "target", "bulk" }, t => Assert.Contains(Unsayable[t].Says, message, StringComparison.Ordinal));
    }

    [Fact]
    public void No_plan_is_no_file() => Assert.Throws<ArgumentNullException>(() => PlanFile.Write(null!));

    private static string Text(PlotPlan plan)
    {
        var sheet = FieldSheet.Of(plan.Solve());
        return string.Join('\n', sheet.Figures.Select(f => $"{f.Code} {f.Label} {f.Value}")) + string.Join('\n', sheet.Findings);
    }
}
