using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>The outlines in a GeoJSON text (RFC 7946).</summary>
internal sealed class GeoJsonOutlines(string file)
{
    private readonly List<(List<GeoPoint> Fixes, string Name, Finding? Noticed, int Line, string Field)> found = [];
    private readonly List<string> skipped = [];

    internal ImmutableArray<PlotOutline> Read(string text)
    {
        var root = JsonAt.Parse(text, file);
        RequireWgs84(root);
        Visit(root, file, "");
        if (found.Count == 0)
        {
            throw new DataFormatException(file, root.Line, null, "no Polygon and no LineString: the file holds no outline");
        }

        var skip =
            skipped.Count == 0
                ? null
                : FindingCatalog.Create(
                    LandCodes.FilePartSkipped,
                    ("count", skipped.Count.ToString(CultureInfo.InvariantCulture)),
                    ("kinds", string.Join(", ", skipped.Distinct()))
                );
        return
        [
            .. found.Select(
                (f, i) =>
                    OutlineParts.Outline(
                        f.Fixes,
                        f.Name,
                        new[] { f.Noticed, i == 0 ? skip : null }.OfType<Finding>(),
                        file,
                        f.Line,
                        f.Field
                    )
            ),
        ];
    }

    private void Visit(JsonAt value, string name, string path)
    {
        string type = Text(value, "type", path);
        switch (type)
        {
            case "FeatureCollection":
                VisitAll(Array(value, "features", path), name, path + "features");
                break;
            case "GeometryCollection":
                VisitAll(Array(value, "geometries", path), name, path + "geometries");
                break;
            case "Feature":
                string own = value.Member("properties")?.Member("name") is { Kind: JsonTokenType.String, Text.Length: > 0 } named
                    ? named.Text
                    : name;
                var geometry = value.Member("geometry") ?? throw Problem(value, path + "geometry", "is missing");
                if (geometry.Kind == JsonTokenType.Null)
                {
                    skipped.Add("feature without geometry");
                }
                else
                {
                    Visit(geometry, own, path + "geometry.");
                }

                break;
            case "Polygon":
                AddPolygon(Array(value, "coordinates", path), name, path + "coordinates");
                break;
            case "MultiPolygon":
                ForEach(Array(value, "coordinates", path), path + "coordinates", (polygon, at) =>
                    AddPolygon(List(polygon, at), name, at)
                );
                break;
            case "LineString":
                Add(Array(value, "coordinates", path), name, path + "coordinates", isRing: false);
                break;
            case "MultiLineString":
                ForEach(Array(value, "coordinates", path), path + "coordinates", (line, at) =>
                    Add(List(line, at), name, at, isRing: false)
                );
                break;
            case "Point" or "MultiPoint":
                skipped.Add(type);
                break;
            default:
                throw Problem(value, path + "type", $"'{type}' is not a GeoJSON type");
        }
    }

    private void VisitAll(JsonAt items, string name, string path) =>
        ForEach(items, path, (item, at) => Visit(item, name, at + "."));

    private void AddPolygon(JsonAt rings, string name, string path)
    {
        if (rings.Items.Count != 1)
        {
            throw Problem(
                rings,
                path,
                rings.Items.Count == 0
                    ? "a polygon needs a ring"
                    : "the polygon has a hole: give the hole as a plot of its own and take its area off"
            );
        }

        Add(List(rings.Items[0], path + "[0]"), name, path + "[0]", isRing: true);
    }

    private void Add(JsonAt positions, string name, string path, bool isRing)
    {
        var fixes = new List<GeoPoint>();
        ForEach(positions, path, (position, at) =>
        {
            var items = List(position, at).Items;
            if (items.Count < 2 || items.Any(i => i.Kind != JsonTokenType.Number))
            {
                throw Problem(position, at, "expected [longitude, latitude]");
            }

            fixes.Add(OutlineParts.Fix(items[1].Number, items[0].Number, file, position.Line, at));
        });
        bool open = isRing && fixes.Count > 0 && fixes[0] != fixes[^1];
        var noticed = open
            ? FindingCatalog.Create(LandCodes.RingNotClosed, ("line", positions.Line.ToString(CultureInfo.InvariantCulture)))
            : null;
        found.Add((fixes, name, noticed, positions.Line, path));
    }

    private static void ForEach(JsonAt list, string path, Action<JsonAt, string> action)
    {
        for (int i = 0; i < list.Items.Count; i++)
        {
            action(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]"));
        }
    }

    private void RequireWgs84(JsonAt root)
    {
        if (root.Member("crs") is { Kind: JsonTokenType.StartObject } crs)
        {
            string name = crs.Member("properties")?.Member("name")?.Text ?? "";
            if (!name.Contains("CRS84", StringComparison.Ordinal) && !name.EndsWith(":4326", StringComparison.Ordinal))
            {
                throw Problem(crs, "crs", $"only WGS84 longitude and latitude are read, found '{name}'");
            }
        }
    }

    private string Text(JsonAt value, string member, string path) =>
        value.Member(member) is { Kind: JsonTokenType.String } text
            ? text.Text
            : throw Problem(value, path + member, "expected a text");

    private JsonAt Array(JsonAt value, string member, string path) =>
        List(value.Member(member) ?? throw Problem(value, path + member, "is missing"), path + member);

    private JsonAt List(JsonAt value, string path) =>
        value.Kind == JsonTokenType.StartArray ? value : throw Problem(value, path, "expected a list");

    private DataFormatException Problem(JsonAt value, string field, string problem) => new(file, value.Line, field, problem);
}
