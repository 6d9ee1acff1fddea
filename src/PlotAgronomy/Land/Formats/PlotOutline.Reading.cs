using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <content>Reads plot outlines from the text of a file: GeoJSON (RFC 7946), GPX 1.0
/// or 1.1, or a list of latitude, longitude.</content>
/// <remarks>Nothing is fetched and no document type is followed. A file that breaks its
/// format is refused with file, line and field.</remarks>
public sealed partial class PlotOutline
{
    /// <summary>Reads a file of any of the three kinds, told apart by its first character.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="fileName">Name used in messages, and as the plot's name where the file gives none.</param>
    /// <returns>The outlines, at least one, in the file's order.</returns>
    /// <exception cref="DataFormatException">The text breaks its format or holds no outline.</exception>
    public static ImmutableArray<PlotOutline> Read(string text, string fileName)
    {
        Check(text, fileName);
        return text.AsSpan().TrimStart("\uFEFF \t\r\n") switch
        {
            ['{', ..] => ReadGeoJson(text, fileName),
            ['<', ..] => ReadGpx(text, fileName),
            _ => ReadList(text, fileName),
        };
    }

    /// <summary>Reads GeoJSON: polygons, and lines walked as tracks, alone or in features and collections.</summary>
    /// <param name="text">Text of the file; positions are longitude, latitude.</param>
    /// <param name="fileName">Name used in messages, and as the plot's name where the file gives none.</param>
    /// <returns>The outlines, at least one, in the file's order.</returns>
    /// <exception cref="DataFormatException">The text breaks its format, holds no outline, or a polygon with a hole.</exception>
    public static ImmutableArray<PlotOutline> ReadGeoJson(string text, string fileName)
    {
        Check(text, fileName);
        return new GeoJsonOutlines(fileName).Read(text);
    }

    /// <summary>Reads GPX: each track or route is an outline; where there is none, the marked places are the corners.</summary>
    /// <param name="text">Text of the file.</param>
    /// <param name="fileName">Name used in messages, and as the plot's name where the file gives none.</param>
    /// <returns>The outlines, at least one, in the file's order.</returns>
    /// <exception cref="DataFormatException">The text breaks its format, names a document type, or holds no outline.</exception>
    public static ImmutableArray<PlotOutline> ReadGpx(string text, string fileName)
    {
        Check(text, fileName);
        return new GpxOutlines(fileName).Read(text);
    }

    /// <summary>Reads a list: one corner a line, latitude then longitude in decimal degrees,
    /// separated by a comma, tab or spaces.</summary>
    /// <param name="text">Text of the file. Empty lines and lines that start with # are passed
    /// over; a first line of words names the columns.</param>
    /// <param name="fileName">Name used in messages and as the plot's name.</param>
    /// <returns>One outline.</returns>
    /// <exception cref="DataFormatException">A line is not two numbers, or the corners enclose no plot.</exception>
    public static ImmutableArray<PlotOutline> ReadList(string text, string fileName)
    {
        Check(text, fileName);
        return [LatitudeLongitudeList.Read(text, fileName)];
    }

    private static void Check(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        Guard.NotBlank(fileName);
        if (text.Length > OutlineParts.LongestText)
        {
            throw new DataFormatException(
                fileName,
                1,
                null,
                FormattableString.Invariant($"longer than {OutlineParts.LongestText} characters")
            );
        }
    }
}
