using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Water that the surface layer of a texture can lose to the air, as printed: a range.</summary>
internal sealed class SurfaceLayer
{
    private static readonly Table<SurfaceLayer> Table = new("Weather/Data/surface-layers.csv", row => new(row));

    private SurfaceLayer(CsvRow row)
    {
        Texture = row.Choice<SoilTexture>("id");
        ReadilyLow = row.Number("readily_low_mm");
        ReadilyHigh = row.Number("readily_high_mm");
        TotalLow = row.Number("total_low_mm");
        TotalHigh = row.Number("total_high_mm");
        Origin = row.Origin();
    }

    internal SoilTexture Texture { get; }

    internal double ReadilyLow { get; }

    internal double ReadilyHigh { get; }

    internal double TotalLow { get; }

    internal double TotalHigh { get; }

    internal Origin Origin { get; }

    /// <summary>The driest, the middle and the wettest that the printed range allows.</summary>
    internal (double Readily, double Total) At(SurfaceEnd end) =>
        end switch
        {
            SurfaceEnd.Driest => (ReadilyLow, TotalLow),
            SurfaceEnd.Wettest => (ReadilyHigh, TotalHigh),
            _ => ((ReadilyLow + ReadilyHigh) / 2, (TotalLow + TotalHigh) / 2),
        };

    /// <summary>None for the clay loams and the sandy clays that the table leaves out.</summary>
    internal static SurfaceLayer? Of(SoilTexture texture) => Table.Rows.SingleOrDefault(l => l.Texture == texture);
}
