using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Calendar;

/// <summary>The texture that the surface layer is reckoned with: the printed table leaves some out.</summary>
internal static class SurfaceTexture
{
    private static readonly Lazy<IReadOnlyDictionary<SoilTexture, SoilTexture>> Nearest = Table.Keyed(
        "Calendar/Data/nearest-textures.csv",
        row => row.Choice<SoilTexture>("id"),
        row =>
        {
            _ = row.Origin();
            return row.Choice<SoilTexture>("taken_as");
        }
    );

    /// <summary>Its own where the table has it; the nearest with a remark; loam with a remark where none is known.</summary>
    internal static (SoilTexture Texture, Finding? Remark) Of(SoilTexture? texture)
    {
        if (texture is not { } known)
        {
            return (SoilTexture.Loam, Remark(SoilTexture.Loam, "neither report nor plot tells it"));
        }

        return SurfaceLayer.Of(known) is not null
            ? (known, null)
            : (Nearest.Value[known], Remark(Nearest.Value[known], $"nothing is printed for {SoilWords.Textures[known]}"));
    }

    private static Finding Remark(SoilTexture texture, string reason) =>
        FindingCatalog.Create(CalendarCodes.TextureTaken, ("texture", SoilWords.Textures[texture]), ("reason", reason));
}
