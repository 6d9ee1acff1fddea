using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What each plausible answer to an open question would make of the plan.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class QuestionStake
{
    private readonly OutcomeSpan span;
    private readonly Lazy<string> atStake;

    internal QuestionStake(OpenQuestion question, ImmutableArray<AnswerCase<PlotAnswers>> cases)
    {
        Question = question;
        Cases = cases;
        span = new(cases.Select(c => c.Value));
        atStake = new(InWords);
    }

    /// <summary>Gets the question.</summary>
    public OpenQuestion Question { get; }

    /// <summary>Gets the plan solved with one answer each; none where no plausible answer can be put into the plan.</summary>
    public ImmutableArray<AnswerCase<PlotAnswers>> Cases { get; }

    /// <summary>Gets the answers that were assumed to other questions, because this one alone does not settle the matter; each
    /// with its question.</summary>
    public ImmutableArray<(OpenQuestion Question, string Answer)> Assumed { get; init; } = [];

    /// <summary>Gets a value indicating whether an answer of a room waits for this one.</summary>
    public bool IsInTheWay { get; init; }

    /// <summary>Gets the least and the most that is paid, counting what is not the same under all answers (lime, fertilizer or
    /// seed); of the answers that can be bought from what is on offer.</summary>
    public (decimal Low, decimal High) Cost => Cases.IsEmpty ? default : span.Cost;

    /// <summary>Gets the money that rests on the answer.</summary>
    public decimal MoneyAtStake => Cost.High - Cost.Low;

    /// <summary>Gets the fewest and the most packages of lime; null where none is ordered in packages.</summary>
    public (int Low, int High)? LimePackages => Cases.IsEmpty ? null : span.LimePackages;

    /// <summary>Gets the least and the most seed that is weighed out.</summary>
    public (Mass Low, Mass High) Seed => Cases.IsEmpty ? (Mass.Zero, Mass.Zero) : span.Seed;

    /// <summary>Gets the kinds that may be sown under some of the answers and not under others.</summary>
    public ImmutableArray<CropKind> Undecided => Cases.IsEmpty ? [] : span.Undecided;

    /// <summary>Gets a value indicating whether no amount, kind or caution of the plan is another under another answer.</summary>
    /// <value>False where the answers could not be put into the plan, so that this is not known.</value>
    public bool ChangesNothing => Cases.IsEmpty ? WaysIntoPlan.NothingPrinted.ContainsKey(Question.Code) : AtStake.Length == 0;

    /// <summary>Gets what is at stake in words, such as <c>28 or 57 bags of lime, 140.00 to 290.00 USD</c>; empty where nothing
    /// is, or where it is not known.</summary>
    public string AtStake => atStake.Value;

    /// <summary>Gets the least and the most of a nutrient that is needed; null where it is not known.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>Both ends.</returns>
    public (ApplicationRate Low, ApplicationRate High)? NeedOf(PlantNutrient nutrient) =>
        Cases.IsEmpty ? null : span.Need(Guard.Defined(nutrient));

    /// <summary>For the order of the questions: what has money or seed at stake first, then what stands in the way of an
    /// answer and cannot be weighed.</summary>
    internal (bool, decimal, double, double, int, bool) Rank
    {
        get
        {
            if (Cases.IsEmpty)
            {
                return (IsInTheWay && !ChangesNothing, 0, 0, 0, 0, false);
            }

            var (money, seed, spread, kinds) = span.Apart;
            return (money > 0 || seed > 0, money, seed, spread, kinds, !ChangesNothing);
        }
    }

    /// <summary>The code of the question and what is at stake.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => AtStake.Length == 0 ? Question.Code : $"{Question.Code}: {AtStake}";

    private string InWords() =>
        Cases.IsEmpty ? ""
        : span.InWords is { Length: > 0 } amounts ? amounts
        : span.CautionsDiffer ? "no amount, but the cautions"
        : "";
}
