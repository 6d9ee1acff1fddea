using System.Text.RegularExpressions;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>The page of small sums: every call it names exists, and its example runs.</summary>
public partial class SmallSumsPageTests
{
    [Fact]
    public void Every_call_of_the_page_exists()
    {
        var members = HouseAssembly.PublicTypes.SelectMany(t => t.GetMembers().Select(m => m.Name)).ToHashSet();
        string[] named = [.. File.ReadLines(Repository.PathOf("docs/small-sums.md")).Where(l => l.StartsWith("| ", StringComparison.Ordinal)).SelectMany(l => Calls().Matches(l.Split('|')[2]).Select(m => m.Groups[1].Value))];
        Assert.True(named.Length >= 20, string.Join(", ", named));
        Assert.Empty(named.Where(n => !members.Contains(n)));
    }

    [Fact]
    public void The_example_of_the_page_is_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/small-sums.md", "tests/PlotAgronomy.Tests/House/SmallSumsPageTests.cs", Run);

    private static void Run(TextWriter output)
    {
        // begin example
        // Six bags of 50 lb are left and the plot has 0.75 acre.
        Package bag = Package.FromWeight(Mass.FromPounds(50));
        ApplicationRate rate = bag.RateOf(6, Area.FromAcres(0.75));
        output.WriteLine($"six bags are {rate}; a bag covers {Amounts.Print(rate.AreaCoveredBy(bag.Weight), "ft2", 0)}");

        // A forage test of one's own hay: pounds in a ton. Two tons were baled.
        RemovalFigure hay = RemovalFigure.Stated(
            "clover hay", YieldUnit.Ton, "forage test of the first cut", (PlantNutrient.Phosphate, 11), (PlantNutrient.Potash, 46));
        foreach (RemovedNutrient gone in CropRemoval.CarriedOff(hay, CropYield.FromTonsPerAcre(2)).Nutrients)
        {
            output.WriteLine($"carried off {gone}");
        }

        // Bray P-1 to Mehlich-3 and back.
        ExtractantConversion factor = ExtractantConversion.TriStateBrayToMehlich3;
        SoilReading bray = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 20, SoilTestUnit.PartsPerMillion, Extractant.BrayP1);
        SoilReading mehlich = factor.Convert(bray).Converted;
        output.WriteLine($"{bray} = {mehlich} = {factor.Backwards.Convert(mehlich).Converted}");
        // end example
    }

    [GeneratedRegex(@"(?:^|[`., (])([A-Z][A-Za-z]+)(?=[`(])")]
    private static partial Regex Calls();
}
