using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>A list of latitude, longitude: one corner a line.</summary>
internal static class LatitudeLongitudeList
{
    private const NumberStyles PlainNumber = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    internal static PlotOutline Read(string text, string file)
    {
        var fixes = new List<GeoPoint>();
        int latitudeColumn = 0,
            longitudeColumn = 1,
            number = 0;
        bool named = false;
        foreach (var each in text.AsSpan().EnumerateLines())
        {
            number++;
            string line = each.Trim("\uFEFF \t").ToString();
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            string[] fields = line.Contains(',', StringComparison.Ordinal)
                ? line.Split(',', StringSplitOptions.TrimEntries)
                : line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            if (!named && fixes.Count == 0 && fields.All(f => f.Length > 0 && char.IsAsciiLetter(f[0])))
            {
                latitudeColumn = Column(fields, "lat", file, number);
                longitudeColumn = Column(fields, "lon", file, number);
                named = true;
                continue;
            }

            // Without named columns nobody knows which two of three are meant: a number of the corner, or a height.
            bool tooMany = !named && fields.Length > 2 && fields.Skip(2).Any(f => f.Length > 0);
            if (tooMany && fields.Length == 3)
            {
                throw new DataFormatException(
                    file,
                    number,
                    null,
                    "three columns need a first line that names them, such as 'lat, lon, height' or 'id, lat, lon'; "
                        + $"found '{line}'"
                );
            }

            if (tooMany || fields.Length <= Math.Max(latitudeColumn, longitudeColumn))
            {
                throw new DataFormatException(
                    file,
                    number,
                    null,
                    $"expected latitude and longitude such as '40.0125, -90.0031', found '{line}'"
                );
            }

            fixes.Add(
                OutlineParts.Fix(
                    Degrees(fields[latitudeColumn], "latitude", file, number),
                    Degrees(fields[longitudeColumn], "longitude", file, number),
                    file,
                    number,
                    "latitude, longitude"
                )
            );
        }

        return OutlineParts.Outline(fixes, file, [], file, number, "latitude, longitude");
    }

    private static int Column(string[] header, string start, string file, int line)
    {
        int column = Array.FindIndex(header, h => h.StartsWith(start, StringComparison.OrdinalIgnoreCase));
        return column >= 0
            ? column
            : throw new DataFormatException(
                file,
                line,
                null,
                $"the columns need names that start with 'lat' and 'lon', found '{string.Join(", ", header)}'"
            );
    }

    private static double Degrees(string text, string field, string file, int line) =>
        double.TryParse(text, PlainNumber, CultureInfo.InvariantCulture, out double degrees)
            ? degrees
            : throw new DataFormatException(
                file,
                line,
                field,
                $"expected decimal degrees such as 40.0125 or -90.0031, found '{text}'"
            );
}
