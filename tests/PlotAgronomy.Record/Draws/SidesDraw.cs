using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws taped sides of each form, and pieces added and taken off.</summary>
internal static class SidesDraw
{
    internal static JsonObject Of(Draw draw)
    {
        double first = draw.Number(80, 350);
        var side = Tape(draw);
        return draw.Whole(0, 6) switch
        {
            0 => new JsonObject
            {
                ["shape"] = "triangle",
                ["a"] = side(first, first),
                ["b"] = side(first * 0.7, first),
                ["c"] = side(first * 0.6, first * 1.3),
            },
            1 => new JsonObject
            {
                ["shape"] = "trapezoid",
                ["a"] = side(first, first),
                ["b"] = side(first * 0.4, first),
                ["length"] = side(60, 240),
            },
            2 => new JsonObject { ["shape"] = "circle", ["radius"] = side(30, 130) },
            3 => new JsonObject
            {
                ["shape"] = "l-shape",
                ["length"] = side(first, first),
                ["width"] = side(first * 0.5, first),
                ["missingLength"] = side(first * 0.2, first * 0.6),
                ["missingWidth"] = side(first * 0.1, first * 0.4),
            },
            4 => FourSides(side, first),
            _ => Rectangle(side, first),
        };
    }

    /// <summary>One or two pieces side by side, and in some plans a round one taken off.</summary>
    internal static JsonArray Pieces(Draw draw)
    {
        var side = Tape(draw);
        var pieces = new JsonArray();
        for (int i = draw.Whole(1, 2); i > 0; i--)
        {
            pieces.Add(new JsonObject { ["add"] = Rectangle(side, draw.Number(120, 250)) });
        }

        if (draw.Chance(0.5))
        {
            pieces.Add(new JsonObject { ["takeOff"] = new JsonObject { ["shape"] = "circle", ["radius"] = side(8, 18) } });
        }

        return pieces;
    }

    private static JsonObject Rectangle(Func<double, double, string> side, double first) => new()
    {
        ["shape"] = "rectangle",
        ["length"] = side(first, first),
        ["width"] = side(first * 0.3, first),
    };

    /// <summary>Two triangles on one diagonal, each with sides that meet.</summary>
    private static JsonObject FourSides(Func<double, double, string> side, double diagonal) => new()
    {
        ["shape"] = "sides-and-diagonals",
        ["around"] = new JsonArray(
            side(diagonal * 0.6, diagonal * 0.9), side(diagonal * 0.6, diagonal * 0.9),
            side(diagonal * 0.6, diagonal * 0.9), side(diagonal * 0.6, diagonal * 0.9)),
        ["diagonals"] = new JsonArray(side(diagonal, diagonal)),
    };

    /// <summary>Lengths between two bounds in feet, written in one unit.</summary>
    private static Func<double, double, string> Tape(Draw draw)
    {
        string unit = draw.Pick("ft", "ft", "yd", "m");
        double foot = unit == "yd" ? 1 / 3.0 : unit == "m" ? 0.3048 : 1;
        return (from, to) => draw.Amount(from * foot, to * foot, 1, unit);
    }
}
