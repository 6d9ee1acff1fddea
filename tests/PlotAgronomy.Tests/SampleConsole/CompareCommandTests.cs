using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.SampleConsole.ConsoleTests;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary><c>compare systems | lime | lots | bag</c> in process against writers.</summary>
public class CompareCommandTests
{
    public static TheoryData<string, string[]> Approved => new()
    {
        { "compare-systems", ["compare", "systems", Data("clover-lots.json"), "--from-memory"] },
        { "compare-lime", ["compare", "lime", Data("clover-lots.json"), "--from-memory"] },
        { "compare-lots", ["compare", "lots", Data("clover-lots.json")] },
        { "compare-bag", ["compare", "bag", Data("store-blend.json")] },
    };

    [Theory, MemberData(nameof(Approved))]
    [Trait("Category", "Generated")]
    public void What_the_demos_compare_is_the_approved_text(string name, string[] args)
    {
        var (exit, sheet, error) = Run([.. args, "--width", "100"]);
        Assert.Equal((0, ""), (exit, error));
        ApprovedText.AssertCurrent(Data($"{name}.approved.txt"), sheet);
    }

    [Fact]
    public void Systems_stand_side_by_side_with_the_gap_and_its_reason()
    {
        string sheet = Compare("systems", "clover-lots", "--from-memory");
        // By the published equations: Tri-State 1995 (25 - 19) x 5 = 30; Missouri 110 (sqrt 45 - sqrt 38) / 8 and potash none, for its pasture target of 160 + 5 x 11 = 215 lb/ac lies below the test of 236.
        double missouriPhosphate = 110 * (Math.Sqrt(45) - Math.Sqrt(38)) / 8;
        AssertRow(sheet, "Tri-State 1995", "wheat", "30", "0");
        AssertRow(sheet, "Missouri build-up equations", "grass pasture or hay", Number(missouriPhosphate, 1), "0");
        Assert.Contains($"{Number(40 - missouriPhosphate, 1)} lb/ac apart", sheet, StringComparison.Ordinal);
        Assert.Contains("raise the soil first, then put back what is carried off", Flat(sheet), StringComparison.Ordinal);
        Assert.Contains("Montana alfalfa phosphorus guide it has no row that comes near.", Flat(sheet), StringComparison.Ordinal);
    }

    /// <summary>By the published equations: Mehlich-3 x 0.70 for Bray P-1, and Tri-State 1995 (25 - 8.4) x 5.</summary>
    [Fact]
    public void Where_one_system_alone_accepts_the_report_others_answer_to_the_converted_reading()
    {
        string sheet = Run("compare", "systems", Repository.PathOf("tests/PlotAgronomy.Tests/Plans/p03-clay-smp59-oh.json")).Out;
        double bray = 0.70 * 12;
        Assert.Contains($"Tri-State 1995, P2O5 {Number((25 - bray) * 5, 0)} lb/ac, from phosphorus {Number(bray, 1)} ppm (Bray P-1)", Regex.Replace(sheet, @"\s+", " "), StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_from_memory_are_asked_for_by_name_or_by_the_plan()
    {
        string sheet = Compare("systems", "clover-lots");
        AssertRow(sheet, "Tri-State 1995", "wheat", "30", "0", "from memory");
        Assert.Contains("data-from-memory", sheet, StringComparison.Ordinal);
        // Missouri's pasture target for potash was read (title of its table XI), its build-up factor for phosphate was not.
        AssertRow(sheet, "Missouri build-up equations", "grass pasture or hay", "-", "0", "read");
    }

    [Fact]
    public void Every_system_is_named_once_as_answering_or_not()
    {
        string sheet = Compare("systems", "frost-seeding");
        string[] lines = sheet.Split('\n');
        Assert.All(RecommendationSystem.Everything, s => Assert.Single(lines.TakeWhile(l => !l.StartsWith("Findings", StringComparison.Ordinal)), l => l.TrimStart().StartsWith(s.Name, StringComparison.Ordinal) || l.Contains($"   {s.Name}   ", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_the_laboratory_itself_recommends_is_said_first() =>
        Assert.Contains("The laboratory itself recommends P2O5 40 lb/ac and K2O 60 lb/ac for clover plot; the plan uses that first.", Flat(Compare("systems", "frost-seeding")), StringComparison.Ordinal);

    [Fact]
    public void A_crop_row_is_asked_for_in_words()
    {
        string sheet = Compare("systems", "clover-lots", "--from-memory", "--crop", "Soybean");
        Assert.Contains("Side by side for soybean, the row asked for", sheet, StringComparison.Ordinal);
        AssertRow(sheet, "Tri-State 1995", "soybean");
    }

    [Fact]
    public void Kinds_that_every_system_answers_alike_share_one_table()
    {
        string sheet = Compare("systems", "fall-blend");
        Assert.Contains("Side by side for Spring oats; Austrian winter pea; Crimson clover", sheet, StringComparison.Ordinal);
        AssertRow(sheet, "North Carolina index", "deer and turkey food plot");
    }

    [Fact]
    public void Lime_is_counted_on_one_common_basis()
    {
        string sheet = Compare("lime", "clover-lots", "--width", "160");
        // 3.15 ton of 90 % lime over 8 inches, as pure carbonate over 6 inches.
        Assert.Contains("3.15 ton/ac of agricultural gr", Flat(sheet), StringComparison.Ordinal);
        AssertRow(sheet, "Tri-State 1995, SMP buffer", "6.0", Number(3.15 * 0.9 * 6 / 8, 2), "from memory");
        // Iowa counts in ECCE for 6 inches, which of pure carbonate is the same weight.
        Assert.Contains("2,800 lb/ac of Iowa effective calcium carbonate equivalent (ECCE 2000 lb/ton)", Flat(sheet), StringComparison.Ordinal);
        AssertRow(sheet, "Iowa PM 1688, table", "6.5", "1.4", "read");
        Assert.Contains("Not asked, because their numbers were not yet checked", sheet, StringComparison.Ordinal);
        Assert.Contains("Kansas MF-2586", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("Not asked", Compare("lime", "clover-lots", "--from-memory"), StringComparison.Ordinal);
    }

    [Fact]
    public void Lime_takes_another_target_and_one_of_the_plans_materials()
    {
        string sheet = Compare("lime", "clover-lots", "--target", "6.5", "--material", "Ground limestone", "--width", "160");
        Assert.Contains("Target pH 6.5: as asked for.", sheet, StringComparison.Ordinal);
        Assert.Contains("and to ground limestone.", sheet, StringComparison.Ordinal);
        // The plan's limestone has 92 % neutralizing value, Tri-state's 90 %.
        string[] cells = sheet.Split('\n').First(l => l.Contains("Tri-State 1995, SMP buffer", StringComparison.Ordinal)).Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        Assert.Contains("3.85 ton/ac of agricultural gr", Flat(sheet), StringComparison.Ordinal);
        Assert.Equal(3.85 * 0.90 / 0.92 * 6 / 8, double.Parse(cells[2], CultureInfo.InvariantCulture), 0.01);
    }

    [Fact]
    public void Lots_are_ranked_by_the_cost_of_the_same_living_stand()
    {
        string sheet = Compare("lots", "clover-lots", "--width", "160");
        // Closed form: rate / (pure x germination) x price of a pound.
        double rate = KindCatalog.Standard.Find("crimson clover").FullRange(SowingMethod.Broadcast).Full.PoundsPerAcre;
        (string Lot, double Cost)[] byHand =
        [
            ("bin run", rate / (0.88 * 0.78) * 84 / 50), ("bare, fresh", rate / (0.985 * 0.86) * 59 / 25), ("bare, last year's", rate / (0.98 * 0.61) * 87 / 50),
            ("much hard seed", rate / (0.98 * 0.64) * 108 / 50), ("coated", rate / (0.652 * 0.85) * 49 / 25),
        ];
        for (int place = 0; place < byHand.Length; place++)
        {
            AssertRow(sheet, $"{place + 1} {byHand[place].Lot}", byHand[place].Cost.ToString("0.00", CultureInfo.InvariantCulture));
        }

        // A pound of the coated lot: 1.96 x 0.34 for coating.
        AssertRow(sheet, "coated 1.96", Number(1.96 * 0.652 * 0.85, 2), Number(1.96 * 0.652 * 0.15, 2), Number(1.96 * 0.34, 2));
        Assert.Contains("[seed-coated]", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bag_is_turned_into_acres_and_held_against_plain_seed()
    {
        string sheet = Compare("bag", "store-blend", "--width", "160");
        (string Kind, double Pure, double Germination)[] tag = [("winter wheat", 0.452, 0.85), ("spring oats", 0.324, 0.85), ("crimson clover", 0.101, 0.75), ("purple top turnip", 0.032, 0.85), ("chicory", 0.014, 0.80)];
        double fullStands = tag.Sum(k => 40 * k.Pure * k.Germination / KindCatalog.Standard.Find(k.Kind).FullRange(SowingMethod.Broadcast).Full.PoundsPerAcre);
        Assert.Contains($"{Number(0.5 * fullStands, 2)} ac at one full stand", sheet, StringComparison.Ordinal);
        Assert.Contains($"{(42 / (0.5 * fullStands)).ToString("0.00", CultureInfo.InvariantCulture)} USD", sheet, StringComparison.Ordinal);
        Assert.Contains("2 bags, 84.00 USD", sheet, StringComparison.Ordinal);
        Assert.Contains("Not on offer as plain seed: Chicory", sheet, StringComparison.Ordinal);
        AssertRow(sheet, "Crimson clover", "CC-12", "1 x 10 lb", "27.00");
        Assert.Contains("plain seed is cheaper by", Flat(sheet), StringComparison.Ordinal);
        Assert.Contains("[blend-bag-thin]", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "--crop", "compare", "systems", "clover-lots", "--crop", "moss")]
    [InlineData(2, "--target", "compare", "lime", "clover-lots", "--target", "9.1")]
    [InlineData(2, "--target", "compare", "lime", "clover-lots", "--target", "NaN")]
    [InlineData(2, "ground limestone", "compare", "lime", "clover-lots", "--material", "chalk")]
    [InlineData(2, "seedLots", "compare", "lots", "fall-blend")]
    [InlineData(2, "storeBlends", "compare", "bag", "fall-blend")]
    [InlineData(1, "--width", "compare", "bag", "store-blend", "--width", "20")]
    [InlineData(1, "cannot read", "compare", "lots", "no-such-file")]
    public void Bad_input_is_one_line_on_stderr(int code, string says, string verb, string subject, string demo, params string[] options)
    {
        var (exit, output, error) = Run([verb, subject, Data($"{demo}.json"), .. options]);
        Assert.Equal((code, ""), (exit, output));
        Assert.Contains(says, Assert.Single(error.TrimEnd('\n').Split('\n')), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compare")]
    [InlineData("compare", "prices")]
    [InlineData("compare", "lots")]
    public void A_wrong_command_line_is_one_line_and_exit_code_1(params string[] args)
    {
        var (exit, _, error) = Run(args);
        Assert.Equal(1, exit);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("systems", "clover-lots")]
    [InlineData("lime", "clover-lots")]
    [InlineData("lots", "clover-lots")]
    [InlineData("bag", "store-blend")]
    public void The_working_is_shown_on_demand_and_names_its_sources(string subject, string demo)
    {
        string work = Compare(subject, demo, "--work", "--format", "markdown");
        Assert.Contains("  - ", work, StringComparison.Ordinal);
        Assert.Matches(@"\[[A-Z]+-", work);
        Assert.StartsWith("{", Compare(subject, demo, "--format", "json"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Comparing_does_not_follow_the_culture(string culture)
    {
        string plain = Compare("lots", "clover-lots") + Compare("lime", "clover-lots", "--target", "6.5") + Compare("bag", "store-blend") + Compare("systems", "clover-lots");
        using var scope = new CultureScope(culture);
        Assert.Equal(plain, Compare("lots", "clover-lots") + Compare("lime", "clover-lots", "--target", "6.5") + Compare("bag", "store-blend") + Compare("systems", "clover-lots"));
    }

    [Fact]
    public void Calibrate_is_one_of_the_commands()
    {
        var (exit, output, error) = Run("calibrate", "--rate", "8 lb/ac", "--swath", "15 ft", "--caught", "0.4 lb", "--catch-time", "30 s", "--pace-time", "23 s");
        Assert.Equal((0, ""), (exit, error));
        Assert.Contains("seed: 8 lb/ac wanted", output, StringComparison.Ordinal);
    }

    private static string Compare(string subject, string demo, params string[] options)
    {
        var (exit, output, error) = Run(["compare", subject, Data($"{demo}.json"), .. options]);
        Assert.Equal((0, ""), (exit, error));
        return output;
    }

    /// <summary>Some line holds the first words and after them, in this order, all the others.</summary>
    private static void AssertRow(string sheet, string first, params string[] then) =>
        Assert.Contains(sheet.Split('\n').Select(Flat), line => line.Contains(first, StringComparison.Ordinal) && InOrder(line[(line.IndexOf(first, StringComparison.Ordinal) + first.Length)..], then));

    private static bool InOrder(string line, string[] words)
    {
        foreach (string word in words)
        {
            int found = $"{line} ".IndexOf($" {word} ", StringComparison.Ordinal);
            if (found < 0)
            {
                return false;
            }

            line = line[(found + word.Length + 1)..];
        }

        return true;
    }

    private static string Flat(string text) => string.Join(' ', text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));

    private static string Number(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
