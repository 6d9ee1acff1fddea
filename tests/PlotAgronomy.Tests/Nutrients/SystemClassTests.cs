using System.Globalization;
using System.Text;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>What every system says in every class it knows, for every test it accepts: rate, class, reason, working, sources and
/// status. The words stand in <c>system-classes.approved.txt</c>, read by a person against the publications; where a class begins
/// and ends is tested beside it (<see cref="SystemLimitTests"/>, <see cref="SystemWordsTests"/>), and its figures by the worked
/// examples.</summary>
public class SystemClassTests
{
    private const int HighestReading = 600;

    [Fact]
    public void One_case_a_class()
    {
        var said = new StringBuilder();
        foreach (var system in RecommendationSystem.Everything.OrderBy(s => s.Id, StringComparer.Ordinal))
        {
            said.Append(CultureInfo.InvariantCulture, $"{system.Id}: {system} ({system.Status})\n");
            foreach (var test in system.Accepts)
            {
                foreach (string line in Classes(system, test))
                {
                    said.Append("  ").Append(line).Append('\n');
                }
            }
        }

        ApprovedText.AssertCurrent(Repository.PathOf("tests/PlotAgronomy.Tests/Nutrients/system-classes.approved.txt"), said.ToString());
    }

    /// <summary>The readings are gone through one by one; of a class the middle one is told.</summary>
    private static IEnumerable<string> Classes(RecommendationSystem system, AcceptedTest test)
    {
        var crop = test.Crops[0];
        var runs = Enumerable.Range(0, HighestReading + 1)
            .Select(reading => (Reading: reading, Answer: Ask(system, test, crop, reading)))
            .GroupBy(r => Class(r.Answer, test.Nutrient));
        yield return $"{test}, {CropRows.WordsFor(crop)}";
        foreach (var run in runs)
        {
            var (reading, answer) = run.ElementAt(run.Count() / 2);
            foreach (string line in Told(answer, test.Nutrient))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"  {reading}: {line}");
            }
        }
    }

    /// <summary>A class by its name; without one, whether anything is put on.</summary>
    private static string Class(NutrientRecommendation answer, PlantNutrient nutrient) =>
        answer.For(nutrient) is { } need
            ? need.Rating?.Name ?? (need.Rate.PoundsPerAcre > 0 ? "some" : "none")
            : "no answer";

    private static IEnumerable<string> Told(NutrientRecommendation answer, PlantNutrient nutrient)
    {
        if (answer.For(nutrient) is not { } need)
        {
            yield return $"no answer: {answer.Unanswered.Single(u => u.Nutrient == nutrient).Finding}";
            yield break;
        }

        yield return $"{Amounts.Print(need.Rate, "lb/ac", 2)}{(need.IsLegalMaximum ? " at most" : "")}; {need.Rating?.ToString() ?? "no class"}";
        yield return need.Why;
        foreach (var line in answer.ShowWork())
        {
            yield return line.ToString();
        }

        yield return $"{need.Status}: {string.Join(' ', need.Sources.Select(s => s.Id))}";
    }

    /// <summary>A soil of which everything is known that any system asks beside the reading; a crop that is carried off where the
    /// system prints what leaves with it.</summary>
    private static NutrientRecommendation Ask(RecommendationSystem system, AcceptedTest test, CropRow crop, double value)
    {
        var reading = SoilReading.FromPrinted(test.Analyte, value, test.Unit, test.Extractants[0]);
        var soil = Known(Report(reading) with { SampleMoisture = SampleMoisture.FieldMoist, PrintedPhosphorusRating = "medium" }, 10) with
        {
            Region = SoilRegion.Piedmont,
            PhosphorusSupply = SoilSupply.Medium,
            ExchangeCapacityGroup = SoilSupply.Low,
        };
        var yield = YieldFor(crop, 4) is { Unit: YieldUnit.Ton } tons ? tons : YieldFor(crop, 100);
        return system.Recommend(soil, system.Id == "MO" ? CropUse.Browsed(crop, yield) : CropUse.CarriedOff(crop, yield));
    }
}
