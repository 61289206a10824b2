// Runs another program if this processor has what x86-64-v3 asks for (AVX2, fused multiply-add, BMI), and ends with 77, which
// ctest counts as skipped, if it has not. A program of its own: built for every processor, unlike the one it starts.

#include <cstdio>
#include <unistd.h>

int main(int count, char** arguments)
{
    if (count < 2) return 2;
#if defined(__x86_64__)
    if (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma") && __builtin_cpu_supports("bmi") && __builtin_cpu_supports("bmi2")) {
        execv(arguments[1], arguments + 1);
        std::perror(arguments[1]);
        return 1;
    }
#endif
    std::puts("skipped: this processor has no AVX2 with fused multiply-add");
    return 77;
}
