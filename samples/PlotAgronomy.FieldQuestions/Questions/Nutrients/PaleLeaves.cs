using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Nutrients;

/// <summary>Pale oats on a limed plot. The report has phosphorus, potassium and manganese by Mehlich-3 and 2.4 % organic matter, and
/// says nothing of sulfur.</summary>
internal static class PaleLeaves
{
    internal static void Answer(TextWriter output)
    {
        var ph = WaterPh.FromValue(6.9);
        var manganese = Read(SoilAnalyte.Manganese, 9);
        var soil = PlotSoil.For(new SoilReport
        {
            Laboratory = "a laboratory of the coast",
            WaterPh = ph,
            SoilClass = SoilClass.Mineral,
            SampledDepth = Length.FromInches(8),
            OrganicMatter = Fraction.FromPercent(2.4),
            Readings = [Read(SoilAnalyte.Phosphorus, 34), Read(SoilAnalyte.Potassium, 71), manganese],
        });
        foreach (var system in new[] { RatingSystem.Find("NJ"), RatingSystem.Delaware, RatingSystem.NorthCarolina })
        {
            var ratings = system.Rate(soil);
            output.WriteLine($"{system}: {string.Join("; ", ratings.Ratings)}");
            foreach (var unrated in ratings.Unrated)
            {
                output.WriteLine($"  {unrated.Reason}");
            }

            foreach (var finding in ratings.Findings)
            {
                output.WriteLine($"  {finding}");
            }
        }

        foreach (var now in new[] { ph, WaterPh.FromValue(6.0) })
        {
            var index = ManganeseAvailability.NewJersey(manganese, now);
            output.WriteLine($"At {now}:");
            output.Tell(index);
        }

        var layer = SampledLayer.FromDepth(Length.FromInches(8));
        var released = SecondaryRule.SulfurReleased(soil.Report.OrganicMatter!.Value, layer);
        output.WriteLine($"Organic matter sets free about {Amounts.Print(released, "lb/ac", 0)} of sulfur a year in {layer}.");
    }

    private static SoilReading Read(SoilAnalyte analyte, double ppm) =>
        SoilReading.FromPrinted(analyte, ppm, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
}
