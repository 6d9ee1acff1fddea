using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Soil;

/// <summary>A plot in Ohio was tested in one way three years ago and in another way now, and the neighbor's report speaks of a
/// third. This time the cores went only four inches down.</summary>
internal static class TwoLaboratories
{
    internal static void Answer(TextWriter output)
    {
        var then = Ppm(SoilAnalyte.Phosphorus, 19, Extractant.BrayP1);
        var now = Ppm(SoilAnalyte.Phosphorus, 31, Extractant.Mehlich3);
        var phosphorus = ExtractantConversion.TriStateBrayToMehlich3;
        output.WriteLine($"Three years ago {then}, now {now}.");
        var alike = phosphorus.Convert(then);
        output.Tell(alike);
        output.WriteLine($"Counted alike it rose by {Amounts.Print(now.PrintedValue - alike.Converted.PrintedValue, 1)} ppm. "
            + $"In the old way the new one is {Tenth(phosphorus.Backwards.Convert(now).Converted)}.");
        foreach (var other in ExtractantConversion.Between(SoilAnalyte.Phosphorus, Extractant.Mehlich3, Extractant.BrayP1))
        {
            output.WriteLine($"By '{other}' it is {Tenth(other.Convert(now).Converted)}: {other.Trust}.");
        }

        var acetate = Ppm(SoilAnalyte.Potassium, 118, Extractant.AmmoniumAcetate);
        var potassium = ExtractantConversion.TriStateAcetateToMehlich3.Convert(acetate);
        output.WriteLine($"The old {potassium.Original} would be {Tenth(potassium.Converted)} today.");
        if (ExtractantConversion.ReasonAgainst(SoilAnalyte.Phosphorus, Extractant.Olsen, Extractant.Mehlich3) is { } reason)
        {
            output.WriteLine($"The neighbor's report: {reason}");
        }

        var shallow = SampledLayer.Measured(Length.FromInches(4), Density.FromGramsPerCubicCentimeter(1.25));
        output.WriteLine($"In pounds an acre the new phosphorus is {Pounds(now, SampledSoil.Conventional)} as laboratories "
            + $"count it; in the {Amounts.Print(shallow.Depth, "in", 0)} that were really taken ({shallow}) "
            + $"[{shallow.Origin}] {Pounds(now, new SampledSoil { Layer = shallow })}.");

        var report = new SoilReport { Laboratory = "the new laboratory", SampledDepth = shallow.Depth, Readings = [now] };
        output.Warn(report.CheckDepth(Length.FromInches(6), "Mehlich-3 phosphorus in Ohio"));
        var ohio = Institution.Find("Ohio");
        var taken = ohio.SoilProgram!.PhosphorusExtractants;
        string rates = taken.Contains(then.Extractant) && taken.Contains(now.Extractant)
            ? "reads both ways, each with limits of its own"
            : "reads one of them only";
        output.WriteLine($"{ohio} {rates}. Next time:");
        foreach (var rule in ohio.SamplingRules)
        {
            string ground = rule.LargestArea is { } largest ? $" from at most {Amounts.Print(largest, "ac", 0)}" : "";
            output.WriteLine($"  {rule.FewestCores} to {rule.MostCores} cores{ground}, again after "
                + $"{rule.ShortestIntervalYears} to {rule.LongestIntervalYears} years, {rule.Note}");
        }
    }

    private static SoilReading Ppm(SoilAnalyte analyte, double value, Extractant extractant) =>
        SoilReading.FromPrinted(analyte, value, SoilTestUnit.PartsPerMillion, extractant);

    private static string Tenth(SoilReading reading) => $"{Amounts.Print(reading.PrintedValue, 1)} ppm";

    private static string Pounds(SoilReading reading, SampledSoil soil) =>
        $"{Amounts.Print(reading.ConvertTo(SoilTestUnit.PoundsPerAcre, soil).Converted.PrintedValue, 0)} lb";
}
