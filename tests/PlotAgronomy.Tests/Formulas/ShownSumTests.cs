using System.Globalization;
using System.Text.RegularExpressions;
using NCalc;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Nutrients;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Formulas;

/// <summary>A line of working shows numbers put into a formula, and what comes of it: the numbers as they are shown are put through by a
/// general expression library, and must give what is shown.</summary>
public partial class ShownSumTests
{
    /// <summary>What is shown is rounded, on both sides.</summary>
    private const double RoundedPart = 0.02;

    private const string SystemsFile = "Nutrients/worked-systems.csv";

    public static TheoryData<string> SystemIds => [.. RecommendationSystem.Everything.Select(s => s.Id)];

    [Theory, MemberData(nameof(SystemIds))]
    public void A_need_is_what_its_shown_numbers_give(string id)
    {
        var rows = WorkedExamples.Table(SystemsFile).Rows.Where(r => r.Text("topic") == "need" && r.Text("system") == id);
        AssertShown(rows.SelectMany(r => SystemRequests.Ask(r).ShowWork()));
    }

    [Theory]
    [InlineData(80, 60)]
    [InlineData(112, 60)]
    [InlineData(150, 0)]
    public void Potash_of_the_two_tri_state_systems_is_what_its_shown_numbers_give(double ppm, double atLeast)
    {
        var crop = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(150));
        var soil = SystemRequests.Known(
            SystemRequests.Report(
                SystemRequests.K(ppm, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
                SystemRequests.K(ppm, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate)),
            10);
        foreach (string id in new[] { "TS-1995", "TS-2020" })
        {
            var answer = RecommendationSystem.Find(id).Recommend(soil, crop);
            Assert.InRange(answer.Potash!.Rate.PoundsPerAcre, atLeast, 300);
            Assert.NotEqual(0, AssertShown(answer.ShowWork()));
        }
    }

    [Theory, MemberData(nameof(LimeMethodIds))]
    public void Lime_is_what_its_shown_numbers_give(string id)
    {
        var method = LimeMethod.Find(id);
        foreach (double reading in new[] { 5.2, 6.1, 6.6 })
        {
            var report = new SoilReport
            {
                Laboratory = "test laboratory",
                WaterPh = WaterPh.FromValue(5.1),
                BufferPhs = [.. method.Buffers.Take(1).Select(b => BufferPh.FromValue(reading, b))],
                PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9),
                SoilClass = method.Soils[0],
            };
            AssertShown(method.NeedFor(report, method.TargetPhs is [var first, ..] ? first : 6.5).ShowWork());
        }
    }

    public static TheoryData<string> LimeMethodIds => [.. LimeMethod.Everything.Select(m => m.Id)];

    [Theory, InlineData("fall-blend"), InlineData("frost-seeding"), InlineData("clover-lots"), InlineData("store-blend")]
    public void Every_line_behind_a_demo_sheet_is_what_its_shown_numbers_give(string demo)
    {
        var plan = PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json"))).Plan!;
        Assert.InRange(AssertShown(FieldSheet.Of(plan.Solve()).Figures.SelectMany(f => f.ShowWork()).Distinct()), 30, int.MaxValue);
    }

    [Theory]
    [InlineData("2.1 x (6 - 5.2) / (6.6 - 5.2) = 1.2 ton/ac", true)]
    [InlineData("2.1 x (6 - 5.2) / (6.6 - 5.2) = 1.3 ton/ac", false)]
    [InlineData("max(0, 3 - 5) = 0", true)]
    [InlineData("min(1, 5.3 / 6) = 88 %", true)]
    [InlineData("100 x 3 / 4 = 75 %", true)]
    [InlineData("(120 - 90) x (1 + 0.05 x 8) = 42 lb/ac", true)]
    [InlineData("(120 - 90) x (1 + 0.05 x 8) = 62 lb/ac", false)]
    public void A_sum_that_is_shown_wrong_is_seen(string numbers, bool isRight)
    {
        Assert.True(TryPutThrough(numbers, out double shown, out double given, out double half));
        Assert.Equal(isRight, IsAlike(shown, given, half));
    }

    /// <summary>How many lines could be put through.</summary>
    private static int AssertShown(IEnumerable<WorkedLine> lines)
    {
        int count = 0;
        foreach (var line in lines)
        {
            if (TryPutThrough(line.Numbers, out double shown, out double given, out double half))
            {
                count++;
                Assert.True(IsAlike(shown, given, half), $"{line}: the shown numbers give {given}");
            }
        }

        return count;
    }

    private static bool IsAlike(double shown, double given, double half) => Math.Abs(shown - given) <= half + (RoundedPart * Math.Abs(given));

    /// <summary>False where words or units stand among the numbers.</summary>
    private static bool TryPutThrough(string numbers, out double shown, out double given, out double half)
    {
        (shown, given, half) = (0, 0, 0);
        if (Sum().Match(numbers) is not { Success: true } sum)
        {
            return false;
        }

        string answer = sum.Groups["answer"].Value.Replace(",", "", StringComparison.Ordinal);
        string put = Thousands().Replace(sum.Groups["sum"].Value, "").Replace(" x ", " * ", StringComparison.Ordinal);
        shown = double.Parse(answer, CultureInfo.InvariantCulture);
        int point = answer.IndexOf('.', StringComparison.Ordinal);
        half = 0.51 * Math.Pow(10, point < 0 ? 0 : -(answer.Length - point - 1));
        // A part of one is shown in percent.
        double unit = sum.Groups["unit"].Value == "%" && !put.Contains("100", StringComparison.Ordinal) ? 100 : 1;
        given = unit * Convert.ToDouble(new Expression(put, ExpressionOptions.IgnoreCaseAtBuiltInFunctions).Evaluate(), CultureInfo.InvariantCulture);
        return true;
    }

    [GeneratedRegex(@"^(?<sum>(?:[0-9.,()+*/ -]| x |\b(?:pow|ln|exp|min|max|if|sqrt)\b|[<>]=?)*[0-9)]) = (?<answer>-?[0-9][0-9,]*(?:\.[0-9]+)?)(?: (?<unit>%|[^=;%]*))?$")]
    private static partial Regex Sum();

    [GeneratedRegex(@"(?<=[0-9]),(?=[0-9]{3}(?![0-9]))")]
    private static partial Regex Thousands();
}
