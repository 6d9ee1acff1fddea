using System.Globalization;
using System.Text.Json.Nodes;

namespace PlotAgronomy.DrawnPlans;

/// <summary>Draws values from one seed. Its own generator (SplitMix64): the plans must never depend on the runtime's.</summary>
internal sealed class Draw(ulong seed)
{
    private ulong state = seed * 0x9E3779B97F4A7C15;

    internal bool Chance(double part) => Part() < part;

    internal int Whole(int from, int to) => from + (int)(Part() * (to - from + 1));

    internal double Number(double from, double to, int decimals = 1) =>
        Math.Round(from + (Part() * (to - from)), decimals, MidpointRounding.ToEven);

    internal T Pick<T>(params IReadOnlyList<T> from) => from[Whole(0, from.Count - 1)];

    internal List<T> Several<T>(IReadOnlyList<T> from, int count)
    {
        var left = from.ToList();
        var picked = new List<T>();
        while (picked.Count < count && left.Count > 0)
        {
            int at = Whole(0, left.Count - 1);
            picked.Add(left[at]);
            left.RemoveAt(at);
        }

        return picked;
    }

    internal string Amount(double from, double to, int decimals, string unit) => Words(Number(from, to, decimals), unit);

    internal string Percent(double from, double to) => Amount(from, to, 1, "%");

    internal decimal Price(double from, double to) => Math.Round((decimal)Number(from, to, 2), 2);

    internal static string Words(double number, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{number:0.######} {unit}");

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A field that stands in a part of the plans only.</summary>
    internal void Maybe(double part, JsonObject of, string field, Func<JsonNode?> value)
    {
        if (Chance(part))
        {
            of[field] = value();
        }
    }

    /// <summary>Leaves out each of some fields in a part of the plans.</summary>
    internal void LeaveOut(double part, JsonObject? of, params ReadOnlySpan<string> fields)
    {
        foreach (string field in fields)
        {
            if (Chance(part))
            {
                of?.Remove(field);
            }
        }
    }

    private double Part()
    {
        state += 0x9E3779B97F4A7C15;
        ulong mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
