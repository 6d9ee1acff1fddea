using System.Collections.Immutable;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>A single entry as it is typed: a word for what it is, how much, the day.</summary>
internal sealed class SingleEntry(PlotAnswers answers, PlotBook book)
{
    private const string Words =
        "lime, fertilizer, seed, rain, count, weeds, clipping, browse, camera, note, instead NAME-N, strike NAME-N";

    private readonly PlotPlan plan = answers.Plan;

    internal ImmutableArray<BookEntry> Read(string text)
    {
        var (word, rest) = FirstWord(text);
        return word switch
        {
            "instead" => Corrected(rest),
            "strike" => [Strike(rest)],
            _ => Plain(word, TypedText.Of(rest)),
        };
    }

    private static (string Word, string After) FirstWord(string text)
    {
        int end = text.IndexOf(' ', StringComparison.Ordinal);
        return end < 0 ? (text.ToLowerInvariant(), "") : (text[..end].ToLowerInvariant(), text[end..].Trim());
    }

    private ImmutableArray<BookEntry> Plain(string word, TypedText typed)
    {
        string plot = plan.Plot.Name;
        Func<DateOnly, ImmutableArray<BookEntry>> read = word switch
        {
            "lime" => on => [Lime(on, typed.Rest)],
            "fertilizer" => on => [Fertilizer(on, typed.Rest)],
            "seed" => on => [Seed(on, typed.Rest)],
            "rain" => on => [RecordText.Rain(plot, on, typed.Rest)],
            "count" => on => RecordText.Counts(plot, on, typed.Rest),
            "weeds" => on => [RecordText.Weeds(plot, on, typed.Rest)],
            "clipping" => on => [RecordText.Clipping(plot, on, typed.Rest)],
            "browse" => on => [RecordText.Browse(plot, on, typed.Rest)],
            "camera" => on => [RecordText.Camera(plot, on, typed.Rest)],
            "note" => on => [BlankReader.Note(plot, on, typed.Rest)],
            _ => throw new FormatException($"expected one of {Words}; found '{word}'"),
        };
        return read(typed.On ?? throw new FormatException("say the day too, year first, as in 2026-09-20"));
    }

    private LimeEntry Lime(DateOnly on, string text)
    {
        var (offer, amount) = Offered(plan.LimeOffers, m => m.Name, text, answers.Lime.Told.Offer);
        return new()
        {
            On = on,
            Plot = plan.Plot.Name,
            Material = offer.Item,
            IsWorkedIn = LimePlacing.Of(plan) == Liming.LimePlacement.WorkedIn,
            Loads = TypedText.Loads(amount, offer.Package.WholeWeight),
        };
    }

    private FertilizerEntry Fertilizer(DateOnly on, string text)
    {
        var bought = answers.Fertilizer.Told.Purchase.OrNull()?.Lines ?? [];
        var (offer, amount) = Offered(plan.FertilizerOffers, p => p.Name, text, bought is [var one] ? one.Offer : null);
        return new()
        {
            On = on,
            Plot = plan.Plot.Name,
            Product = offer.Item,
            Loads = TypedText.Loads(amount, offer.Package.WholeWeight),
        };
    }

    /// <summary>The pass whose kinds are named, or the only one.</summary>
    private SowingEntry Seed(DateOnly on, string text)
    {
        var passes = answers.Spreading.OrNull()?.Passes ?? [];
        var pass = passes.FirstOrDefault(p =>
            p.Kinds.Any(k =>
                text.Contains(k.Planned.Kind.ShortName, StringComparison.OrdinalIgnoreCase)
                || text.Contains(k.Planned.Kind.CommonName, StringComparison.OrdinalIgnoreCase)
            )
        ) ?? (passes is [var only] ? only : null);
        return pass is null
            ? throw new FormatException($"name a kind: {string.Join(", ", passes.Select(p => p.Names))}")
            : SeedText.Instead(plan, pass, on, text);
    }

    private ImmutableArray<BookEntry> Corrected(string text)
    {
        var (name, rest) = FirstWord(text);
        var there = Find(name);
        var entries = Read(rest);
        return entries is [var one]
            ? [one.InPlaceOf(there.Id!)]
            : throw new FormatException("one entry takes the place of one: name a single kind");
    }

    private StruckEntry Strike(string name)
    {
        var there = Find(name);
        return new()
        {
            On = there.On,
            Plot = there.Plot,
            Corrects = there.Id,
        };
    }

    private BookEntry Find(string name) =>
        book.Current.FirstOrDefault(e => string.Equals(e.Id, name, StringComparison.OrdinalIgnoreCase))
        ?? throw new FormatException($"no entry that holds is called '{name}'; history lists their names");

    /// <summary>The offer named at the beginning of the text, and the rest; else the one that was planned.</summary>
    private static (Offer<T> Offer, string After) Offered<T>(
        ImmutableArray<Offer<T>> offers,
        Func<T, string> name,
        string text,
        Offer<T>? planned
    )
        where T : class
    {
        var named = offers
            .Where(o => text.StartsWith(name(o.Item), StringComparison.OrdinalIgnoreCase))
            .MaxBy(o => name(o.Item).Length);
        return named is not null ? (named, text[name(named.Item).Length..].Trim(' ', ':', ','))
            : planned is not null ? (planned, text)
            : throw new FormatException($"name the product first: {string.Join(", ", offers.Select(o => name(o.Item)))}");
    }
}
