using System.Text;

namespace PlotAgronomy.Sheets;

/// <summary>Words of which the codes of figures and the ids of sections are made. They name the thing alone, never its place, so
/// that they stay what they are when another is added.</summary>
internal static class FigureCode
{
    /// <summary>Words joined by dots.</summary>
    internal static string Of(params ReadOnlySpan<string> words) => string.Join('.', words);

    /// <summary>A name as one word: small letters and figures, hyphens between them.</summary>
    internal static string Word(string name)
    {
        var word = new StringBuilder(name.Length);
        foreach (char letter in name)
        {
            if (char.IsLetterOrDigit(letter))
            {
                word.Append(char.ToLowerInvariant(letter));
            }
            else if (letter is not ('\'' or '\u2019') && word.Length > 0 && word[^1] != '-')
            {
                word.Append('-');
            }
        }

        return word.Length == 0 ? "unnamed" : word.ToString().TrimEnd('-');
    }

    /// <summary>A nutrient, by its name and not by its sign.</summary>
    internal static string Word(PlantNutrient nutrient) => Word(nutrient.ToString());
}
