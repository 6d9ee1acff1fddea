namespace PlotAgronomy.Sample.Commands;

/// <summary>What each shell is told: ask the program itself, and offer files where it knows no word.</summary>
internal static class CompletionScript
{
    internal static IReadOnlyDictionary<string, string> OfShells { get; } =
        new Dictionary<string, string>
        {
            ["bash"] = """
                # In ~/.bashrc: source <(plot-agronomy completion bash)
                _plot_agronomy() {
                  local word
                  COMPREPLY=()
                  while IFS= read -r word; do
                    COMPREPLY+=("$(printf '%q' "$word")")
                  done < <("${COMP_WORDS[0]}" complete -- "${COMP_WORDS[@]:1:COMP_CWORD}" 2> /dev/null)
                }
                complete -o default -F _plot_agronomy plot-agronomy

                """,
            ["zsh"] = """
                # In ~/.zshrc, behind compinit: source <(plot-agronomy completion zsh)
                _plot_agronomy() {
                  local -a found
                  found=("${(@f)$("${words[1]}" complete -- "${(@)words[2,CURRENT]}" 2> /dev/null)}")
                  found=("${(@)found:#}")
                  if (( ${#found} )); then compadd -- "${found[@]}"; else _files; fi
                }
                compdef _plot_agronomy plot-agronomy

                """,
            ["fish"] = """
                # plot-agronomy completion fish > ~/.config/fish/completions/plot-agronomy.fish
                function __plot_agronomy
                    set -l before (commandline -opc)
                    set -l word (commandline -ct)
                    command $before[1] complete -- $before[2..-1] "$word" 2> /dev/null
                end
                complete -c plot-agronomy -a '(__plot_agronomy)'

                """,
            ["pwsh"] = """
                # In $PROFILE: plot-agronomy completion pwsh | Out-String | Invoke-Expression
                Register-ArgumentCompleter -Native -CommandName plot-agronomy -ScriptBlock {
                    param($word, $line, $cursor)
                    $elements = $line.CommandElements | Where-Object { $_.Extent.EndOffset -lt $cursor }
                    $before = @($elements | ForEach-Object { "$_" })
                    $rest = @($before | Select-Object -Skip 1)
                    & $before[0] complete -- @rest "$word" 2> $null | ForEach-Object {
                        $text = if ($_ -match ' ') { "'$_'" } else { $_ }
                        [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
                    }
                }

                """,
        };
}
