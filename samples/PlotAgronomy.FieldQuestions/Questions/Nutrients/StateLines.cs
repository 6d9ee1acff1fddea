using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Nutrients;

/// <summary>A farm on a state line sends one sample to two laboratories: what the states say of corn, and which sample each
/// wants. </summary>
internal static class StateLines
{
    internal static void Answer(TextWriter output)
    {
        var soil = PlotSoil.For(new SoilReport
        {
            Laboratory = "two laboratories, one sample",
            SoilClass = SoilClass.Mineral,
            SampledDepth = Length.FromInches(6),
            PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9),
            Readings =
            [
                Read(SoilAnalyte.Phosphorus, 12, Extractant.BrayP1), Read(SoilAnalyte.Phosphorus, 17, Extractant.Mehlich3),
                Read(SoilAnalyte.Potassium, 96, Extractant.AmmoniumAcetate),
                Read(SoilAnalyte.Potassium, 108, Extractant.Mehlich3),
            ],
        });
        var corn = CropUse.CarriedOff(CropRow.Corn, CropYield.FromBushelsPerAcre(120));
        RecommendationSystem[] asked =
            [RecommendationSystem.TriState1995, RecommendationSystem.Kansas, RecommendationSystem.Oklahoma];
        var systems = SystemComparison.For(soil, corn, asked);
        foreach (var row in systems.Rows)
        {
            output.WriteLine(row);
            if (row.Need is { BuildUp: { } raised, Replacement: { } back })
            {
                string printed = row.Need.AsPrinted is { } table ? $"; the table prints {Whole(table)}" : "";
                output.WriteLine($"  of it {Whole(raised)} raise the soil, {Whole(back)} put back what the corn takes{printed}");
            }
        }

        var apart = systems.Disagreements.Select(d => $"{d}. {d.Why}");
        var silent = systems.LeftOut.SelectMany(l => l.Unanswered, (l, u) => $"{l.System.Name}: {u.Reason}").Distinct();
        foreach (string line in apart.Concat(silent))
        {
            output.WriteLine(line);
        }

        foreach (var system in asked)
        {
            output.WriteLine($"{system}: cores {Inches(system.ShallowestSample)} deep, at most {Inches(system.DeepestSample)}.");
        }

        output.Warn(systems.Findings.DistinctBy(f => f.Text));
    }

    private static SoilReading Read(SoilAnalyte analyte, double ppm, Extractant extractant) =>
        SoilReading.FromPrinted(analyte, ppm, SoilTestUnit.PartsPerMillion, extractant);

    private static string Whole(ApplicationRate rate) => Amounts.Print(rate, "lb/ac", 0);

    private static string Inches(Length depth) => Amounts.Print(depth, "in", 0);
}
