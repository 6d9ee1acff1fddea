namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks a person, and asks again when an answer cannot be read.</summary>
internal sealed class Interview(TextReader answers, TextWriter output)
{
    internal delegate bool Reader<T>(string text, out T value, out string problem);

    internal T Ask<T>(CalibrationQuestion question, Reader<T> read)
    {
        while (true)
        {
            output.WriteLine(question.Question);
            string text = answers.ReadLine() ?? throw new BadAnswerException($"--{question.Name} is missing: {question.Help}");
            if (read(text, out var value, out string problem))
            {
                return value;
            }

            output.WriteLine($"  {problem}");
        }
    }
}
