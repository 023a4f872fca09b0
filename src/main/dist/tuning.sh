# Read by the launchers, with the program's arguments: sets "tuning" to words for Java.
#
# Short commands end before the optimising compiler pays off, and the loops of a render are so plain
# that it costs more than it saves (measured: 10 and 100 minutes); other long commands need it. With
# a small nursery a long render takes no more memory than a short one. The shortest compile only what
# runs often, map their archive where it was made, so that nothing in it is to be changed, and have
# the usual collector, which takes the archive's objects as they are; the plain one works with the
# least. In a take two loops, over bands and over the cells of the net, are worth
# the second compiler, and no others; a practice session measures a take after each pass. So it is with the local
# page, whose answers are short: while the second compiler works, a browser on the same two processors
# waits (95 of 100 readings under 14 ms with the first alone, 19 ms with both), and with a large nursery
# few keys meet a collection.
kind=${1:-}
[ "$kind" != check ] || [ $# -ne 2 ] || [ ! -f "$2" ] || kind=one
case $kind in
  one | talas | sollus | --version | -V)
    kind=shortest
    tuning="-XX:+UseG1GC -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=8
    -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0" ;;
  render) tuning="-XX:+UseSerialGC -Xmn24m -XX:TieredStopAtLevel=1" ;;
  take | practise) tuning="-XX:+UseSerialGC -Xmn24m -XX:Tier4InvocationThreshold=500000 -XX:Tier4MinInvocationThreshold=60000
    -XX:Tier4CompileThreshold=1500000 -XX:Tier4BackEdgeThreshold=4000000" ;;
  open) tuning="-XX:+UseSerialGC -Xmn96m -XX:Tier4InvocationThreshold=500000 -XX:Tier4MinInvocationThreshold=60000
    -XX:Tier4CompileThreshold=1500000 -XX:Tier4BackEdgeThreshold=4000000" ;;
  pack | drill | play | record | demo | page | calibrate) tuning="-XX:+UseSerialGC -Xmn24m" ;;
  *) tuning="-XX:+UseSerialGC -XX:TieredStopAtLevel=1" ;;
esac
tuning="-Xlog:disable $tuning -Djava.awt.headless=true"
