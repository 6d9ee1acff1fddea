using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Nutrients;

/// <summary>Pale oats on a limed plot. The report has phosphorus, potassium and manganese by Mehlich-3 and 2.4 % organic
/// matter, and says nothing of sulfur.</summary>
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
        // A second bag of the same cores went to North Carolina, which prints an index.
        var south = PlotSoil.For(new SoilReport
        {
            Laboratory = "North Carolina",
            WaterPh = ph,
            SoilClass = SoilClass.Mineral,
            Readings = [Index(SoilAnalyte.Phosphorus, 31), Index(SoilAnalyte.Potassium, 36), Index(SoilAnalyte.Manganese, 62)],
        });
        (RatingSystem System, PlotSoil Soil)[] read =
        [
            (RatingSystem.Find("NJ"), soil), (RatingSystem.Delaware, soil), (RatingSystem.NorthCarolina, south),
        ];
        foreach (var ratings in read.Select(r => r.System.Rate(r.Soil)))
        {
            output.WriteLine($"{ratings.System}: {string.Join("; ", ratings.Ratings)}.");
            output.Warn(ratings.Findings);
        }

        foreach (var now in new[] { ph, WaterPh.FromValue(6.0) })
        {
            output.WriteLine($"At {now} {ManganeseAvailability.NewJersey(manganese, now)}");
        }

        var layer = SampledLayer.FromDepth(Length.FromInches(8));
        var released = SecondaryRule.SulfurReleased(soil.Report.OrganicMatter!.Value, layer);
        output.WriteLine($"Organic matter sets free about {Amounts.Print(released, "lb/ac", 0)} of sulfur a year in {layer}.");
    }

    private static SoilReading Index(SoilAnalyte analyte, double index) =>
        SoilReading.FromPrinted(analyte, index, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);

    private static SoilReading Read(SoilAnalyte analyte, double ppm) =>
        SoilReading.FromPrinted(analyte, ppm, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
}
