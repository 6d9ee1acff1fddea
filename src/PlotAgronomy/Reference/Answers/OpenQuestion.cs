using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>A fact that is missing, and who knows it. Its code is stable and never renamed.</summary>
/// <remarks>What each plausible value would change is not told here.</remarks>
/// <example>
/// <code>
/// var report = new SoilReport { Laboratory = "state", WaterPh = WaterPh.FromValue(5.2), SoilClass = SoilClass.Mineral };
/// foreach (var question in LimeMethod.Oregon.NeedFor(report, targetPh: 6.4).Questions)
/// {
///     Console.WriteLine($"{question.Whom}: {question.Text}");
/// }
/// // Laboratory: Oregon EM 9585, Sikora buffer reads Sikora buffer pH, which the report does not print. Can state tell it?
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public abstract class OpenQuestion : IEquatable<OpenQuestion>
{
    internal const int MostPlausible = 6;

    internal static readonly EnumWords<WhomToAsk> WhomWords = new(
        (WhomToAsk.Laboratory, "laboratory"),
        (WhomToAsk.Dealer, "dealer"),
        (WhomToAsk.Tag, "tag"),
        (WhomToAsk.Tape, "measure"),
        (WhomToAsk.OwnEyes, "yourself")
    );

    private readonly QuestionTemplate template;
    private readonly ImmutableArray<FindingValue> values;

    private protected OpenQuestion(QuestionTemplate template, ImmutableArray<FindingValue> values)
    {
        this.template = template;
        this.values = values;
    }

    /// <summary>Gets the stable code, such as <c>lime-ask-reading</c>.</summary>
    public string Code => template.Code;

    /// <summary>Gets whom to ask.</summary>
    public WhomToAsk Whom => template.Whom;

    /// <summary>Gets what it is about, such as a kind, a lot or a material; null where it is the whole.</summary>
    public string? Subject => template.SubjectIn(values);

    /// <summary>Gets the question in English. It is put together when asked for.</summary>
    public string Text => template.TextWith(values);

    /// <summary>Gets who holds that it must be known.</summary>
    internal Source Source => template.Source;

    /// <summary>Gets how well that is known.</summary>
    internal DataStatus Status => template.Status;

    /// <summary>Gets the plausible values of the fact in words, at most six.</summary>
    public abstract ImmutableArray<string> PlausibleTexts { get; }

    /// <summary>Whom to ask, in one word for a list.</summary>
    internal string WhomInWords => WhomWords[Whom];

    /// <summary>Says whether this asks the same about the same thing.</summary>
    /// <param name="other">Another question.</param>
    /// <returns>True when it does.</returns>
    public bool Equals(OpenQuestion? other) => other is not null && Code == other.Code && values.SequenceEqual(other.values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as OpenQuestion);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Code, values.Length);

    /// <summary>Text such as <c>laboratory, lime-ask-reading: ...</c>.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{WhomInWords}, {Code}: {Text}";
}

/// <summary>A missing fact with its plausible values.</summary>
/// <typeparam name="T">Type of the fact.</typeparam>
public sealed class OpenQuestion<T> : OpenQuestion
    where T : notnull
{
    private readonly Func<T, string> print;

    internal OpenQuestion(
        QuestionTemplate template,
        ImmutableArray<FindingValue> values,
        ImmutableArray<T> plausible,
        Func<T, string> print
    )
        : base(template, values)
    {
        if (plausible.Length > MostPlausible)
        {
            throw new ArgumentException($"At most {MostPlausible} values are plausible.", nameof(plausible));
        }

        this.print = print;
        Plausible = plausible;
    }

    /// <summary>Gets plausible values of the fact, at most six; none where they cannot be named.</summary>
    public ImmutableArray<T> Plausible { get; }

    /// <inheritdoc/>
    public override ImmutableArray<string> PlausibleTexts => [.. Plausible.Select(print)];

    internal string InWords(T value) => print(value);
}
