using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Soil;

/// <summary>One soil, three exchange capacities: the laboratory prints a lime test index and a capacity of 11.8, a home sum gives
/// less, and a report by volume less again.</summary>
internal static class ExchangeCapacity
{
    internal static void Answer(TextWriter output)
    {
        var buffer = BufferPh.FromLimeTestIndex(66, SoilBuffer.Smp);
        var printed = CationCharge.FromMilliequivalentsPer100Grams(11.8);
        var report = new SoilReport
        {
            Laboratory = "a laboratory of the river towns",
            WaterPh = WaterPh.FromValue(5.8),
            BufferPhs = [buffer],
            SampledDepth = Length.FromInches(6),
            PrintedExchangeCapacity = printed,
            Readings =
            [
                Ppm(SoilAnalyte.Calcium, 940), Ppm(SoilAnalyte.Magnesium, 132), Ppm(SoilAnalyte.Potassium, 109),
                Ppm(SoilAnalyte.Sodium, 18),
            ],
        };
        output.WriteLine($"A lime test index of {Amounts.Print(buffer.LimeTestIndex, 0)} is a {buffer}.");
        output.WriteLine($"Ways to count the acidity from it: {string.Join("; ", AcidityTerm.For(SoilBuffer.Smp))}.");
        foreach (var balance in CationBalance.ByEveryTerm(report))
        {
            output.WriteLine($"By {balance.Term}: {Charge(balance.Capacity)}, {Print(balance.BaseSaturation)} of it bases; "
                + $"bases alone {Charge(balance.BaseSum)}.");
        }

        output.WriteLine($"Each term rounded to a tenth, as it is printed, with sodium counted (printed: {Charge(printed)}):");
        output.Tell(CationBalance.For(report, AcidityTerm.SmpWithSodium).WithTermsRounded(1));

        // A laboratory that scoops its samples prints by volume; a cubic centimeter of this soil weighs 1.08 grams.
        var byVolume = CationCharge.FromMilliequivalentsPer100CubicCentimeters(10.9);
        output.WriteLine($"{byVolume} in a scooped sample is "
            + $"{Charge(byVolume.ByWeight(Density.FromGramsPerCubicCentimeter(1.08)))}.");
    }

    private static SoilReading Ppm(SoilAnalyte analyte, double value) =>
        SoilReading.FromPrinted(analyte, value, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate);

    private static string Charge(CationCharge? charge) =>
        charge is { } known ? $"{Amounts.Print(known.Milliequivalents, 1)} meq/100 g" : "no capacity";

    private static string Print(Fraction? part) => part is { } known ? Amounts.Print(known, 0) : "an unknown part";
}
