using PlotAgronomy.Soil;

namespace PlotAgronomy.Records;

/// <summary>What must be alike for readings to be compared: what was measured, how, by whom and how deep.</summary>
/// <param name="What">What was measured, in words.</param>
/// <param name="Method">Extractant and unit, or buffer.</param>
/// <param name="Laboratory">Name of the laboratory, as the catalog has it.</param>
/// <param name="Depth">Sampled depth in words; blank where it is not stated.</param>
/// <param name="Noise">Which noise applies.</param>
internal sealed record ReadingSeries(string What, string Method, string Laboratory, string Depth, ReadingNoise Noise)
{
    internal string InWords => string.Join(", ", new[] { What, Method, Laboratory, Depth }.Where(t => t.Length > 0));

    /// <summary>Every reading of a report with its series. What is only known to be less than a limit is left out.</summary>
    internal static IEnumerable<(ReadingSeries Series, double Value)> Of(SoilReport report)
    {
        string laboratory = Institution.FindLaboratory(report.Laboratory).Name;
        string depth = report.SampledDepth is { } deep ? Amounts.Print(deep, "in", 1) : "";
        if (report.WaterPh is { } water)
        {
            yield return (new("water pH", "", laboratory, depth, ReadingNoise.Ph), water.Value);
        }

        if (report.SaltPh is { } salt)
        {
            yield return (new("salt pH", "", laboratory, depth, ReadingNoise.Ph), salt.Value);
        }

        foreach (var buffer in report.BufferPhs.Select(b => b.Buffer).Distinct())
        {
            if (report.FindBuffer(buffer) is { } read)
            {
                yield return (new("buffer pH", SoilWords.For(buffer), laboratory, depth, ReadingNoise.Unknown), read.Value);
            }
        }

        if (report.OrganicMatter is { } organic)
        {
            yield return (new("organic matter", "%", laboratory, depth, ReadingNoise.Unknown), organic.Percent);
        }

        foreach (var reading in report.Readings.Where(r => !r.IsUpperLimit))
        {
            string form = reading.Form == PrintedForm.Oxide ? " as oxide" : "";
            string method = $"{SoilWords.Extractants[reading.Extractant]}, {SoilWords.For(reading.Unit)}{form}";
            yield return (
                new(SoilWords.For(reading.Analyte), method, laboratory, depth, NoiseOf(reading.Analyte)),
                reading.PrintedValue
            );
        }
    }

    private static ReadingNoise NoiseOf(SoilAnalyte analyte) =>
        analyte is SoilAnalyte.Phosphorus or SoilAnalyte.Potassium or SoilAnalyte.Magnesium
            ? ReadingNoise.Nutrient
            : ReadingNoise.Unknown;
}
