using System.Collections.Immutable;
using System.Globalization;
using System.Xml;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>The outlines in a GPX text (1.0 or 1.1). Document types are refused and nothing is fetched.</summary>
internal sealed class GpxOutlines(string file)
{
    private const NumberStyles PlainNumber =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    private sealed class Walk(string kind, int line)
    {
        internal string Kind { get; } = kind;

        internal int Line { get; } = line;

        internal string Name { get; set; } = "";

        internal int Segments { get; set; }

        internal List<GeoPoint> Fixes { get; } = [];

        /// <summary>Whether it may go round a plot: fixes at three places at least.</summary>
        internal bool IsAround => Fixes.Distinct().Skip(2).Any();
    }

    internal ImmutableArray<PlotOutline> Read(string text)
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = OutlineParts.LongestText,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
        };
        try
        {
            using var reader = XmlReader.Create(new StringReader(text.TrimStart('\uFEFF')), settings);
            return Outlines(Paths(reader));
        }
        catch (XmlException problem)
        {
            throw new DataFormatException(file, Math.Max(1, problem.LineNumber), null, "not valid GPX: " + problem.Message);
        }
    }

    private ImmutableArray<PlotOutline> Outlines(List<Walk> paths)
    {
        var walked = paths.Where(p => p.Kind != "wpt" && p.Fixes.Count > 0).ToList();
        var around = walked.Where(p => p.IsAround).ToList();
        if (walked.Count > 0)
        {
            // Where none goes round anything, the first says what is wrong with it.
            return [.. (around.Count > 0 ? around : walked).Select(p => Outline(p, Noticed(p, walked.Count - around.Count)))];
        }

        return paths.SingleOrDefault(p => p.Kind == "wpt") is { } marks
            ?
            [
                Outline(
                    marks,
                    [
                        FindingCatalog.Create(
                            LandCodes.MarksAsCorners,
                            ("count", marks.Fixes.Count.ToString(CultureInfo.InvariantCulture))
                        ),
                    ]
                ),
            ]
            : throw new DataFormatException(file, 1, "gpx", "no track, route or marked place: the file holds no outline");
    }

    private static IEnumerable<Finding> Noticed(Walk path, int stray)
    {
        if (path.Segments > 1)
        {
            yield return FindingCatalog.Create(
                LandCodes.TrackJoined,
                ("count", path.Segments.ToString(CultureInfo.InvariantCulture))
            );
        }

        if (stray > 0)
        {
            yield return FindingCatalog.Create(
                LandCodes.FilePartSkipped,
                ("count", stray.ToString(CultureInfo.InvariantCulture)),
                ("kinds", "tracks of fewer than 3 different fixes")
            );
        }
    }

    private PlotOutline Outline(Walk path, IEnumerable<Finding> noticed) =>
        OutlineParts.Outline(path.Fixes, path.Name.Length > 0 ? path.Name : file, noticed, file, path.Line, path.Kind);

    private List<Walk> Paths(XmlReader reader)
    {
        var paths = new List<Walk>();
        Walk? open = null;
        Walk? marks = null;
        reader.MoveToContent();
        if (reader.LocalName != "gpx")
        {
            throw new DataFormatException(file, Line(reader), reader.LocalName, "expected a gpx file");
        }

        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.EndElement && reader.LocalName is "trk" or "rte")
            {
                open = null;
            }

            if (reader.NodeType != XmlNodeType.Element)
            {
                continue;
            }

            switch (reader.LocalName)
            {
                case "trk" or "rte":
                    open = new Walk(reader.LocalName, Line(reader));
                    paths.Add(open);
                    break;
                case "trkseg" when open is not null:
                    open.Segments += reader.IsEmptyElement ? 0 : 1;
                    break;
                case "name" when open is { Fixes.Count: 0 } && reader.Depth == 2:
                    open.Name = ReadName(reader);
                    break;
                case "trkpt" or "rtept" when open is not null:
                    open.Fixes.Add(Fix(reader));
                    break;
                case "wpt":
                    if (marks is null)
                    {
                        paths.Add(marks = new Walk("wpt", Line(reader)));
                    }

                    marks.Fixes.Add(Fix(reader));
                    break;
                default:
                    break;
            }
        }

        return paths;
    }

    /// <summary>The text of the name; the reader stops on its end.</summary>
    private static string ReadName(XmlReader reader)
    {
        var name = new System.Text.StringBuilder();
        if (!reader.IsEmptyElement)
        {
            while (reader.Read() && reader.NodeType != XmlNodeType.EndElement)
            {
                name.Append(reader.Value);
            }
        }

        return name.ToString().Trim();
    }

    private GeoPoint Fix(XmlReader reader) =>
        OutlineParts.Fix(Degrees(reader, "lat"), Degrees(reader, "lon"), file, Line(reader), reader.LocalName);

    private double Degrees(XmlReader reader, string attribute) =>
        double.TryParse(reader.GetAttribute(attribute), PlainNumber, CultureInfo.InvariantCulture, out double degrees)
            ? degrees
            : throw new DataFormatException(
                file,
                Line(reader),
                $"{reader.LocalName} {attribute}",
                $"expected decimal degrees, found '{reader.GetAttribute(attribute)}'"
            );

    private static int Line(XmlReader reader) => ((IXmlLineInfo)reader).LineNumber;
}
