using System.Collections.Immutable;
using System.Text.RegularExpressions;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>Reads what was typed about rain, counts, weeds, cages, browse and cameras.</summary>
internal static partial class RecordText
{
    /// <summary><c>0.8 in</c> or <c>1.4 in over 7 days</c>.</summary>
    internal static RainEntry Rain(string plot, DateOnly on, string text)
    {
        var (amount, over) = TypedText.Halves(text, " over ");
        return new()
        {
            On = on,
            Plot = plot,
            Amount = TypedText.Depth(amount),
            Days = over is null ? 1 : TypedText.Counts(over.Replace("days", "", StringComparison.OrdinalIgnoreCase), "days")[0],
        };
    }

    /// <summary><c>19 25 14 in 1 ft2</c>, or by kind: <c>crimson clover: 19 25; winter oats: 8 9 in 1 ft2</c>.</summary>
    internal static ImmutableArray<BookEntry> Counts(string plot, DateOnly on, string text)
    {
        var (counted, hoop) = TypedText.Halves(text, " in ");
        if (hoop is null)
        {
            throw new FormatException("say the plants in each hoop and the hoop: 19 25 14 22 in 1 ft2");
        }

        var ground = TypedText.Ground(hoop);
        return
        [
            .. counted
                .Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(part => TypedText.Halves(part, ":"))
                .Select(part => new CountEntry
                {
                    On = on,
                    Plot = plot,
                    Hoop = ground,
                    Kind = part.After is null ? null : TypedText.Kind(part.Before),
                    Plants = TypedText.Counts(part.After ?? part.Before, "the plants in each hoop"),
                }),
        ];
    }

    /// <summary><c>pigweed</c> or <c>pigweed, 5 %</c>.</summary>
    internal static WeedEntry Weeds(string plot, DateOnly on, string text)
    {
        var (seen, cover) = text.TrimEnd().EndsWith('%') ? TypedText.Halves(text, ",") : (text, null);
        return new()
        {
            On = on,
            Plot = plot,
            Seen = seen,
            Cover = cover is null ? null : TypedText.Percent(cover),
        };
    }

    /// <summary><c>5 10 20 10 3 2</c>, or of one kind: <c>chicory: 5 10 20 10 3 2</c>.</summary>
    internal static BrowseEntry Browse(string plot, DateOnly on, string text)
    {
        var (name, plants) = TypedText.Halves(text, ":");
        return new()
        {
            On = on,
            Plot = plot,
            Kind = plants is null ? null : TypedText.Kind(name),
            PlantsByClass = TypedText.Counts(plants ?? name, "the plants in each of six classes of use"),
        };
    }

    /// <summary><c>310 pictures in 14 days</c>.</summary>
    internal static CameraEntry Camera(string plot, DateOnly on, string text)
    {
        var said = Pictures().Match(text);
        return said.Success
            ? new()
            {
                On = on,
                Plot = plot,
                Images = TypedText.Counts(said.Groups["pictures"].Value, "pictures")[0],
                Days = TypedText.Counts(said.Groups["days"].Value, "days")[0],
            }
            : throw new FormatException("say the pictures with deer and the days: 310 pictures in 14 days");
    }

    /// <summary><c>620/350 540/400 g in 9.6 ft2, 22 % dry</c>: inside and outside of each cage.</summary>
    internal static ClippingEntry Clipping(string plot, DateOnly on, string text)
    {
        var said = Cages().Match(text);
        if (!said.Success)
        {
            throw new FormatException(
                "say inside and outside of each cage, and the ground: 620/350 540/400 g in 9.6 ft2, 22 % dry"
            );
        }

        string unit = said.Groups["unit"].Value;
        return new()
        {
            On = on,
            Plot = plot,
            Clipped = TypedText.Ground(said.Groups["ground"].Value),
            DryMatter = said.Groups["dry"].Success ? TypedText.Percent(said.Groups["dry"].Value) : null,
            Pairs =
            [
                .. said.Groups["pairs"]
                    .Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                    .Select(pair => pair.Split('/'))
                    .Select(pair => new ClippedPair
                    {
                        Inside = TypedText.Weight($"{pair[0]} {unit}"),
                        Outside = TypedText.Weight($"{pair[1]} {unit}"),
                    }),
            ],
        };
    }

    [GeneratedRegex(
        @"^(?<pictures>\d+)\s*(?:pictures?)?\s*(?:in|over)\s*(?<days>\d+)\s*days?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Pictures();

    [GeneratedRegex(
        @"^(?<pairs>(?:[\d.]+/[\d.]+\s+)+)(?<unit>[a-z]+)\s+in\s+(?<ground>[\d.,]+\s*\w+)(?:,\s*(?<dry>[\d.]+\s*%)\s*dry)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Cages();
}
