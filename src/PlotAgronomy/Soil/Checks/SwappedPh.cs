using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A soil's pH and its buffer pH that do not belong together: one typed in the place of the other, or one of them
/// misread.</summary>
/// <remarks>Mineral soil holds 0.5 to 5 meq of acidity per unit of pH; a buffer falls by one unit for 4 to 12 meq. So its reading
/// lies above the soil's own pH wherever lime is due, and below it the swapped pair is the likelier one.</remarks>
internal static class SwappedPh
{
    internal static IEnumerable<Finding> Of(SoilReport report, WaterPh? water)
    {
        var (soil, words) =
            water is not null ? (water.Value, water.ToString())
            : report.SaltPh is { } salt ? (salt.Value, salt.ToString())
            : (double.NaN, "");
        foreach (var buffer in report.BufferPhs)
        {
            if (CodeFor(soil, buffer.Value, buffer.Buffer) is { } code)
            {
                yield return FindingCatalog.Create(code, ("water", words), ("buffer", buffer.ToString()));
            }
        }

        if (report.UnnamedBufferPh is { } unnamed && PhPairRule.ForUnknownBuffer.LooksSwapped(soil, unnamed))
        {
            yield return FindingCatalog.Create(
                SoilCodes.PhBufferSwapped,
                ("water", words),
                ("buffer", $"buffer pH {Amounts.Print(unnamed, 2)}")
            );
        }
    }

    private static string? CodeFor(double soil, double reading, SoilBuffer buffer)
    {
        var rule = PhPairRule.For(buffer);
        return rule.LooksSwapped(soil, reading) ? SoilCodes.PhBufferSwapped
            : rule.Contradicts(soil, reading) ? SoilCodes.PhBufferContradict
            : null;
    }
}
