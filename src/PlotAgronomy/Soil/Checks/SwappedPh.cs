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

        if (report.UnnamedBufferPh is { } unnamed && LooksSwapped(soil, unnamed, null))
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
        double? start = BufferStart.Of(buffer);
        return LooksSwapped(soil, reading, start) ? SoilCodes.PhBufferSwapped
            : soil <= SoilConstants.All["acid-without-reserve-ph"] && FindsNoAcidity(reading, buffer, start)
                ? SoilCodes.PhBufferContradict
            : null;
    }

    /// <summary>The soil's pH lies clearly above the buffer's: it could be the buffer's reading, or the buffer finds acidity in a
    /// soil that can hold next to none.</summary>
    private static bool LooksSwapped(double soil, double reading, double? start) =>
        !Tolerance.IsBelow(soil - reading, SoilConstants.All["swapped-ph-margin"])
        && reading < SoilConstants.All["lime-not-expected-ph"]
        && (
            start is not { } from
            || !Tolerance.IsAbove(soil, from)
            || !Tolerance.IsBelow(from - reading, SoilConstants.All["acid-buffer-drop"])
        );

    /// <summary>SMP and Sikora end half a unit below their start: their acidity terms are zero from pH 7.0 on.</summary>
    private static bool FindsNoAcidity(double reading, SoilBuffer buffer, double? start) =>
        start is { } from && !Tolerance.IsBelow(reading, from - (BufferStart.IsAboveTheTerms(buffer) ? PlaceholderMargin : 0));

    private static double PlaceholderMargin => SoilConstants.All["buffer-placeholder-margin"];
}
